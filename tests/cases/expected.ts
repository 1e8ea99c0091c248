import type { RivalKind } from "#server/domain/weighing/rivals.ts";

/** `honest`: sound, or sound but for mends that are what they look like. `silent`: what was seen tells nothing. `at odds`: something on it is not what is claimed. */
type Verdict = "honest" | "silent" | "at odds";

/** What an honest expert would say of a case on the seed graph, in a form that can be held against the answer. What is not named is not judged. */
export interface Expected {
  readonly verdict: Verdict;
  readonly headline: "for" | "against" | "does not discriminate";
  /** Findings by observation (or `attr.form` ...): the label, and of a contradiction its hardness and direction, as "contradictory physical late". */
  readonly findings?: Readonly<Record<string, string>>;
  /** Parts that stand in rule-outs against the attribution, all of them, by hardness; "attribution" where no part does. */
  readonly ruledOut: { readonly physical: readonly string[]; readonly practice: readonly string[] };
  /** Signs by claim: "stands", or "set aside by" the observation that accounts for it. */
  readonly signs?: Readonly<Record<string, string>>;
  /** Claims whose sign or finding an exception could still take away, with what was not looked for. */
  readonly wouldVoid?: Readonly<Record<string, string>>;
  /** Likeliest state of parts: "later", or "later or reworked" where an expert would not choose. */
  readonly states?: Readonly<Record<string, string>>;
  /** The same if the claimed years are taken as true. */
  readonly statesIfClaimed?: Readonly<Record<string, string>>;
  /** A year within the credible years in which the part was made, or in which the work on it was done. */
  readonly made?: Readonly<Record<string, number>>;
  readonly worked?: Readonly<Record<string, number>>;
  /** What the cheapest way to save a part gives up, for the attribution to be possible, or for nothing in it to be unusual. */
  readonly mends?: {
    readonly possible?: Readonly<Record<string, string>>;
    readonly usual?: Readonly<Record<string, string>>;
  };
  readonly origins?: { readonly atLeast: number; readonly apart?: readonly (readonly [string, string])[] };
  /** Stories that do better than others, as [better, worse]. */
  readonly ahead?: readonly (readonly [RivalKind, RivalKind])[];
  /** Parts of an honest piece that are likelier later, or from an earlier piece, and are taken as such. */
  readonly ownedUp?: readonly string[];
  /** The story that an honest piece is likelier under than as claimed, with or without later parts. */
  readonly outdone?: RivalKind;
}
