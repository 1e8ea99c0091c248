import type { Claim, Hardness } from "../../../domain/claim.ts";
import type { TermId } from "../../../domain/ids.ts";

/**
 * What joins two terms, in the order it is read. Up to `void when` and from `dated in` on, claims say it; what lies between
 * stands in the terms themselves.
 * - `spread from`, `spread to`: from the subject of the spread to either region.
 * - `void when`: from what is observed to the subject of the claim that it sets aside.
 * - `dated in`, `not found in`, `said of`: from the subject of a claim to what its scope names: with a date, keeping it
 *   out, or saying anything else.
 */
export const LINK_KINDS = [
  ...(["requires", "typical of", "spread from", "spread to", "confined to", "void when"] as const),
  ...(["mistaken for", "broader", "looked for on", "has part"] as const),
  ...(["dated in", "not found in", "said of"] as const),
] as const;
export type LinkKind = (typeof LINK_KINDS)[number];

/** Links by scope: they join nearly everything with a few regions, forms and kinds of part. */
export const SCOPE_LINKS: readonly LinkKind[] = ["dated in", "not found in", "said of"];

/** Links that are walked at the second step: what dates, and what is of a kind. */
export const FAR_LINKS: readonly LinkKind[] = [
  "requires",
  "typical of",
  "confined to",
  "mistaken for",
  "broader",
];

/** One kind of joint between two terms, with every claim that says it. */
export interface Link {
  readonly from: TermId;
  readonly to: TermId;
  readonly kind: LinkKind;
  /** Of its claims: physical if one is; none where they bound nothing or there are none. */
  readonly hardness?: Hardness;
  /** By id; none where the term itself says it. */
  readonly claims: readonly Claim[];
}

/** What names a link: each pair of terms has at most one of a kind and direction. */
export const linkId = ({ from, kind, to }: Pick<Link, "from" | "kind" | "to">): string =>
  `${from} ${kind} ${to}`;
