import type { TermId } from "./ids.ts";
import type { Looking } from "./looking.ts";

/** The kinds of node in the graph. `part` is a kind of part (drawer bottom, back board), not a part of one piece. */
export const TERM_KINDS = [
  "feature",
  "practice",
  "tool",
  "hardware",
  "material",
  "finish",
  "style",
  "form",
  "region",
  "maker",
  "part",
] as const;
export type TermKind = (typeof TERM_KINDS)[number];

/** A match in the Getty Art & Architecture Thesaurus; unchecked until a person has looked it up. */
export interface AatMatch {
  readonly id: string;
  readonly label: string;
  readonly checked: false | { readonly on: string; readonly by: string };
}

/**
 * A node of the graph: something that can be seen on a part, done in a shop, bought, or named.
 * Ids are `<kind>.<slug>`, e.g. `tool.circular-saw`. `broader` is one term of the same kind (a tree, SKOS broader).
 */
export interface Term {
  readonly id: TermId;
  readonly kind: TermKind;
  /** Generic trade name; never a person, firm or brand (a `maker` term alone may name a workshop). */
  readonly label: string;
  readonly otherLabels?: readonly string[];
  /** The label takes the definite article in a sentence: "in the United States". */
  readonly withArticle?: boolean;
  /** What it is. Plain sentences. */
  readonly note?: string;
  /** Of a feature: how it is looked for, what it is mistaken for, what innocent causes it has. */
  readonly looking?: Looking;
  readonly broader?: TermId;
  /** It is one with its broader term, which stands for both; it stays for what names it already. */
  readonly merged?: true;
  /** For a feature: the kinds of part it is looked for on. For a form: the parts it is expected to have. */
  readonly parts?: readonly TermId[];
  readonly aat?: AatMatch;
}
