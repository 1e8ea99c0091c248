import type { Citations, Claim, Hardness, Relation, Status, Strength } from "#server/domain/claim.ts";
import type { PartState } from "#server/domain/part-state.ts";

/** A claim in plain strings. What is left out gets a sane value: accepted, usual, cited, of no scope. */
export interface ClaimSketch {
  readonly id: string;
  readonly relation: Relation;
  readonly subject?: string;
  readonly when?: string;
  readonly region?: string;
  readonly form?: string;
  readonly part?: string;
  readonly hardness?: Hardness;
  readonly strength?: Strength;
  readonly status?: Status;
  readonly citations?: Citations;
  readonly ways?: readonly (readonly string[])[];
  readonly closed?: boolean;
  readonly object?: string;
  readonly regions?: readonly string[];
  readonly from?: string;
  readonly to?: string;
  readonly years?: readonly [number, number];
  readonly states?: readonly PartState[];
  readonly cause?: string;
  readonly of?: string;
  readonly condition?: string;
  readonly anywhere?: boolean;
  readonly absenceOnly?: boolean;
  readonly note?: string;
}

const HARD: readonly Relation[] = ["introduced", "attested", "active", "requires"];
const WITH_HARDNESS: readonly Relation[] = [
  ...HARD,
  ...(["common from", "common until", "discontinued", "current", "confined to", "not found in"] as const),
];

/**
 * A claim of the graph from a sketch. Unless the sketch says otherwise `introduced`, `attested`, `active` and `requires` are
 * physical and the rest practice, and a list of ways is closed.
 */
export function aClaim(sketch: ClaimSketch): Claim {
  const { region, form, part, hardness, closed, anywhere, ...rest } = sketch;
  const { relation } = sketch;
  const scope = {
    ...(region === undefined ? {} : { region }),
    ...(form === undefined ? {} : { form }),
    ...(part === undefined ? {} : { part }),
  };
  return {
    strength: "usual",
    status: "accepted",
    citations: [{ basis: "common practice" }],
    ...(relation === "spread to" || relation === "void when" ? {} : { scope }),
    ...(WITH_HARDNESS.includes(relation)
      ? { hardness: hardness ?? (HARD.includes(relation) ? "physical" : "practice") }
      : {}),
    ...(relation === "requires" ? { closed: closed ?? true } : {}),
    ...(relation === "void when" ? { anywhere: anywhere ?? false } : {}),
    ...rest,
  } as unknown as Claim;
}
