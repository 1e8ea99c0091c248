import type { Hardness, Strength } from "./claim.ts";
import type { Seen, Sureness } from "./examination.ts";
import type { ClaimId, ObservationId, PartId, SourceId, TermId } from "./ids.ts";
import type { PartState } from "./part-state.ts";
import type { RevisionNumber } from "./revision.ts";
import type { Year, YearsJson } from "./years.ts";

/**
 * The answer of the engine: one plain JSON value without prose, sorted, the same bytes for the same input.
 * Published as docs/formats/report.schema.json. Infinite years are null.
 */
export interface Report {
  readonly format: "scribeline/report";
  readonly version: 1;
  /** Name and version of the engine that answered. */
  readonly engine: string;
  readonly revision: RevisionNumber;
  readonly assumptions: Assumptions;
  /** False if a stage was cut short; what is missing stands in `notSearched`. */
  readonly complete: boolean;
  readonly attribution: AttributionReading;
  /** One per observation and per checked part of the attribution, the weightiest first (E23). */
  readonly findings: readonly Finding[];
  /** Physical ones first, against the attribution first, what would take least to give up first; up to a stated number. */
  readonly ruleOuts: readonly RuleOut[];
  readonly ruleOutCount: RuleOutCount;
  readonly notSearched: readonly NotSearched[];
  readonly signs: readonly Sign[];
  readonly parts: readonly PartSummary[];
  readonly gaps: readonly Gap[];
  readonly neighbourhood: { readonly terms: number; readonly claims: number; readonly paths: number };
}

/** Numbers the engine assumes rather than cites; shown on screen as assumed. */
export interface Assumptions {
  /** Years that `~` adds to a year or decade, and to a century. */
  readonly padYear: number;
  readonly padCentury: number;
  readonly maxDepth: number;
  /** Paths listed per finding; the rest are counted. */
  readonly pathsListed: number;
}

/** A place of the attribution (E14): a region, or what is left of one beside the regions the claims name. */
export interface Place {
  readonly region: TermId | null;
  readonly elsewhere: boolean;
}

export interface AttributionReading {
  readonly date: string;
  /** Outer hull of the claimed date with its pads. */
  readonly years: readonly [Year | null, Year | null];
  readonly region?: TermId;
  readonly form?: TermId;
  readonly style?: TermId;
  readonly maker?: TermId;
  readonly places: readonly Place[];
}

export type FindingLabel = "contradictory" | "consistent" | "silent";
export type SilenceReason =
  | "defeated"
  | "out-of-scope"
  | "overridden"
  | "open-list"
  | "unknown-end"
  | "undated"
  | "looked-for-absent"
  | "could-not-be-seen";

/** Year sets of one hardness. `outer` takes all doubt loosely, `inner` strictly. */
export interface YearSets {
  readonly outer: YearsJson;
  readonly inner: YearsJson;
}

/** What a bound rests on. Assumptions are ids like `earliestAnywhere(tool.circular-saw)`. */
export interface Support {
  readonly claims: readonly ClaimId[];
  readonly assumptions: readonly string[];
}

export interface Finding {
  /** The observation's id, or `attr.form`, `attr.style`, `attr.maker`. */
  readonly id: string;
  readonly observation?: ObservationId;
  readonly part?: PartId;
  readonly feature: TermId;
  readonly seen: Seen;
  readonly sureness: Sureness;
  readonly label: FindingLabel;
  /** Of a contradiction: physical "cannot be", practice "out of its time". */
  readonly hardness?: Hardness;
  /** Of a contradiction: the feature's years lie after (late) or before (early) the claimed ones, or on both sides. */
  readonly direction?: "late" | "early" | "gap" | "nowhere";
  readonly gapYears?: number;
  /** Consistent under every reading of the claims. */
  readonly certain?: boolean;
  /** Consistent only on loose readings. */
  readonly marginal?: boolean;
  /** A claim it rests on is itself doubtful (`?`). */
  readonly doubtful?: boolean;
  /** First that applies; `reasons` has all. */
  readonly reason?: SilenceReason;
  readonly reasons: readonly SilenceReason[];
  readonly possible: YearSets;
  readonly usual: YearSets;
  /** Rival claims that alone keep the finding open (E6). */
  readonly openOnlyBy: readonly ClaimId[];
  /** Irredundant: of the contradiction if there is one, else of the set (E19). */
  readonly support: Support;
  /** Why the support gives these years, as a tree; shared sub-trees carry the same `ref`. */
  readonly derivation?: Derivation;
  readonly ways: readonly WaysBlock[];
  readonly pathCount: number;
  readonly paths: readonly Path[];
  /** Claims met that count for nothing here, with the reason. */
  readonly setAside: readonly SetAside[];
  /** Exceptions not yet looked for that would void a claim of the support. */
  readonly voidIf: readonly VoidIf[];
}

/** A derivation tree: leaves are cited claims or marked assumptions, inner nodes say what follows for which term. */
export type Derivation =
  | {
      readonly kind: "claim";
      readonly claim: ClaimId;
      readonly years: YearsJson;
    }
  | {
      readonly kind: "assumption";
      readonly assumption: string;
      readonly years: YearsJson;
      readonly from: readonly Derivation[];
    }
  | {
      readonly kind: "derived";
      readonly ref: number;
      readonly term: TermId;
      readonly place: Place | null;
      readonly by: "all-of" | "any-way" | "way" | "rivals" | "diffusion" | "places";
      readonly hardness: Hardness;
      readonly years: YearsJson;
      readonly from: readonly Derivation[];
    }
  | { readonly kind: "told"; readonly ref: number };

/** For one closed list: which of its ways are open for the claimed years. */
export interface WaysBlock {
  readonly claim: ClaimId;
  readonly term: TermId;
  readonly ways: readonly {
    readonly terms: readonly TermId[];
    readonly open: boolean;
    readonly years: YearsJson;
  }[];
}

/** A chain from the feature to one dated (or undated) end. */
export interface Path {
  readonly via: readonly ClaimId[];
  /** Terms passed, the feature first. */
  readonly terms: readonly TermId[];
  readonly dated?: ClaimId;
  readonly assumptions: readonly string[];
  readonly cites: readonly {
    readonly claim: ClaimId;
    readonly basis: string;
    readonly source?: SourceId;
    readonly locator?: string;
  }[];
  readonly label: FindingLabel | "way-excluded";
  readonly hardness?: Hardness;
  readonly years: YearsJson;
  readonly gapYears?: number;
  readonly reason?: SilenceReason;
}

export interface SetAside {
  readonly claim: ClaimId;
  readonly reason: "defeated" | "overridden" | "out-of-scope" | "open-list";
  /** The exception that holds, or the claim that overrides. */
  readonly by?: ClaimId;
  readonly observation?: ObservationId;
}

export interface VoidIf {
  readonly claim: ClaimId;
  readonly exception: ClaimId;
  readonly condition: TermId;
  /** not looked for, could not be seen, or only possibly there. */
  readonly standing: "not-looked-for" | "could-not-be-seen" | "merely-possible";
}

/** Something that could be given up; a rule-out is a minimal set of these that cannot hold together. */
export type Atom =
  | { readonly kind: "attr"; readonly of: "date" | "region" | "style" | "form" | "maker" }
  | { readonly kind: "original"; readonly part: PartId }
  | { readonly kind: "observation"; readonly observation: ObservationId }
  | { readonly kind: "claim"; readonly claim: ClaimId }
  | { readonly kind: "rivals"; readonly claims: readonly ClaimId[] }
  | { readonly kind: "separate"; readonly parts: readonly [PartId, PartId] }
  | { readonly kind: "assumption"; readonly assumption: string };

/** A minimal set of atoms that cannot hold together, at one place. */
export interface RuleOut {
  readonly id: string;
  /** physical if it holds from physical claims alone: "what rules it out"; practice: "what would be unusual". */
  readonly hardness: Hardness;
  /** attribution: conflicts with what is claimed; parts: two parts cannot be of one making; observation: empty in itself. */
  readonly against: "attribution" | "parts" | "observation";
  readonly places: readonly Place[];
  readonly atoms: readonly Atom[];
  /** Findings whose windows clash. */
  readonly findings: readonly string[];
  readonly parts: readonly PartId[];
  readonly gapYears?: number;
}

/** How many rule-outs there are, listed or not. One of two parts counts with each, one of two claims too. */
export interface RuleOutCount {
  readonly count: number;
  /** The search ended before it was through: there can be more. */
  readonly isLowerBound: boolean;
  /** `first`: the foremost of them in the list. */
  readonly byPart: readonly { readonly part: PartId; readonly count: number; readonly first: string }[];
  /** By the claims that say when or where; not those that say what is needed to make a thing. */
  readonly byClaim: readonly { readonly claim: ClaimId; readonly count: number; readonly first: string }[];
}

/** What the search does not cover, named rather than passed over: where a budget was met, and what giving up a claim would bring back. */
export interface NotSearched {
  readonly why: "too-many-proofs" | "too-many-rule-outs" | "claims-given-up";
  readonly findings: readonly string[];
}

/** What an `indicates` claim says of a part. */
export interface Sign {
  readonly observation: ObservationId;
  readonly part: PartId;
  readonly feature: TermId;
  readonly claim: ClaimId;
  readonly strength: Strength;
  readonly sureness: Sureness;
  /** States the sign speaks for; `against` when something every old piece shows was looked for and is absent. */
  readonly speaks: "for" | "against";
  readonly states: readonly PartState[];
  readonly standing: "stands" | "set-aside";
  /** The exceptions that hold, with the observation that meets them. */
  readonly because: readonly { readonly exception: ClaimId; readonly observation: ObservationId }[];
  readonly voidIf: readonly VoidIf[];
  /** Other signs of the same cause on this part: count once. */
  readonly cause?: string;
}

export interface PartSummary {
  readonly part: PartId;
  /** Worst of its findings: what its hatching shows. */
  readonly speaks: "against-hard" | "against-soft" | "sign" | "for" | "nothing" | "not-looked";
  readonly possible: YearsJson;
  readonly usual: YearsJson;
  readonly counts: { readonly seen: number; readonly absent: number; readonly unseen: number };
}

/** What the graph does not know. */
export interface Gap {
  readonly kind: "undated-term" | "unknown-end" | "no-claim-here" | "open-list" | "chain-cut";
  readonly term?: TermId;
  readonly claim?: ClaimId;
  readonly finding?: string;
}
