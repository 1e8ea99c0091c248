import type { Sign } from "./report.ts";

/** Whether a sign speaks against an original part as it was made. One of age, which an original part shows too, does not. */
export const speaksOfChange = ({ speaks, states }: Pick<Sign, "speaks" | "states">): boolean =>
  (speaks === "against") === states.includes("original");
