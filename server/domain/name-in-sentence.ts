import type { Term } from "./term.ts";

/** The label as it stands in a sentence: "the United States", "Boston". */
export const nameInSentence = ({ label, withArticle }: Term): string =>
  withArticle ? `the ${label}` : label;
