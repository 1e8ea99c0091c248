import type { ClaimId, SourceId, TermId } from "./ids.ts";
import type { PartState } from "./part-state.ts";

/** Where a claim comes from. Shown wherever the claim is shown, and never raised. */
export type Citation =
  | {
      readonly basis: "published";
      readonly source: SourceId;
      readonly locator: string;
      readonly note?: string;
    }
  | { readonly basis: "common practice"; readonly note?: string }
  | { readonly basis: "from memory"; readonly note?: string };
export type Citations = readonly [Citation, ...Citation[]];

/** The claim applies where all named dimensions hold; region, form and kind of part inherit downwards. */
export interface Scope {
  readonly region?: TermId;
  readonly form?: TermId;
  readonly part?: TermId;
}

export const STRENGTHS = ["certain", "firm", "usual", "tentative"] as const;
export type Strength = (typeof STRENGTHS)[number];

/** physical: the thing did not exist (hard). practice: habit or fashion (soft). */
export type Hardness = "physical" | "practice";

export type Status = "accepted" | "proposed" | "rejected";

interface ClaimBase {
  readonly id: ClaimId;
  readonly strength: Strength;
  readonly status: Status;
  /** Why it was rejected, or what it is meant to say; shown to readers. */
  readonly note?: string;
  readonly citations: Citations;
  /** Row of the fact register it was modelled from, e.g. `A13`. */
  readonly row?: string;
}

/** Relations that state one event, read from EDTF in the role `event`. */
export const EVENT_RELATIONS = [
  "introduced",
  "attested",
  "common from",
  "common until",
  "discontinued",
] as const;
/** Relations that state a span, read from EDTF in the role `period`. */
export const PERIOD_RELATIONS = ["current", "active"] as const;

/** The subject can only be made by one of `ways`; each way needs all its terms. An open list bounds nothing. */
export interface Requires extends ClaimBase {
  readonly relation: "requires";
  readonly subject: TermId;
  readonly scope: Scope;
  readonly hardness: Hardness;
  readonly ways: readonly (readonly TermId[])[];
  readonly closed: boolean;
}

export interface Dated extends ClaimBase {
  readonly relation: (typeof EVENT_RELATIONS)[number] | (typeof PERIOD_RELATIONS)[number];
  readonly subject: TermId;
  readonly scope: Scope;
  readonly hardness: Hardness;
  /** EDTF text; its role follows from the relation. */
  readonly when: string;
}

/** Usual company (a feature of a style, region, form or shop); bounds nothing. */
export interface TypicalOf extends ClaimBase {
  readonly relation: "typical of";
  readonly subject: TermId;
  readonly scope: Scope;
  readonly object: TermId;
}

/** Made only in these regions. */
export interface ConfinedTo extends ClaimBase {
  readonly relation: "confined to";
  readonly subject: TermId;
  readonly scope: Scope;
  readonly hardness: Hardness;
  readonly regions: readonly [TermId, ...TermId[]];
}

/** Never made in the scope, or not in the years of `when` (EDTF, role `period`). */
export interface NotFoundIn extends ClaimBase {
  readonly relation: "not found in";
  readonly subject: TermId;
  readonly scope: Scope;
  readonly hardness: Hardness;
  readonly when?: string;
}

/** Takes between `years[0]` and `years[1]` years to spread from one region to another. */
export interface SpreadTo extends ClaimBase {
  readonly relation: "spread to";
  readonly subject: TermId;
  readonly from: TermId;
  readonly to: TermId;
  readonly years: readonly [number, number];
}

/** An undated sign: the subject, seen on a part in scope, speaks for one of these states of that part. */
export interface Indicates extends ClaimBase {
  readonly relation: "indicates";
  readonly subject: TermId;
  readonly scope: Scope;
  readonly states: readonly [PartState, ...PartState[]];
  /** Signs of one cause count once. */
  readonly cause?: string;
}

/** Exception: the claim `of` says nothing where `condition` is observed (on the same or a joined part, or anywhere). */
export interface VoidWhen extends ClaimBase {
  readonly relation: "void when";
  readonly of: ClaimId;
  readonly condition: TermId;
  readonly anywhere: boolean;
  /** Excuses only that the sign was looked for and is absent; where the sign is seen it says nothing. */
  readonly absenceOnly?: boolean;
}

/** An edge of the graph. The type makes it impossible without a citation. */
export type Claim = Requires | Dated | TypicalOf | ConfinedTo | NotFoundIn | SpreadTo | Indicates | VoidWhen;
export type Relation = Claim["relation"];
