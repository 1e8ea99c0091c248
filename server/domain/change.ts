import type { Claim } from "./claim.ts";
import type { Source } from "./source.ts";
import type { Term } from "./term.ts";

/** One thing before and after; `undefined` before is new, `undefined` after is withdrawn. */
export type Edit =
  | { readonly kind: "term"; readonly before?: Term; readonly after?: Term }
  | { readonly kind: "claim"; readonly before?: Claim; readonly after?: Claim }
  | { readonly kind: "source"; readonly before?: Source; readonly after?: Source };

/** A change of the graph as a value: it can be applied, inverted and laid over a neighbourhood. */
export type Change = readonly Edit[];

/** The graph as a value. */
export interface Graph {
  readonly terms: ReadonlyMap<string, Term>;
  readonly claims: ReadonlyMap<string, Claim>;
  readonly sources: ReadonlyMap<string, Source>;
}
