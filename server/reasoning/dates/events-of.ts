import type { Claim, Dated } from "../../domain/claim.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { Bound } from "../bound.ts";
import type { KnownGraph } from "../known-graph.ts";
import type { CurveEvents, Grid, Range } from "./curve.ts";

type Missing = Dates["assumedShapes"][number]["missing"];

/** The events that bounds state of one term, with those that had to be assumed. */
export interface KnownEvents extends CurveEvents {
  readonly missing: Missing;
  /** Its end is of the kind that leaves no stragglers. */
  readonly endIsPhysical: boolean;
}

/** Years from introduction to common use, from common use back, from decline to end and back, where one is not known. */
const RISE = 25;
const RISE_BACK = 40;
const FALL = 40;
const FALL_BACK = 25;

/** Reads the dated bounds of a term as events (docs/method.md). Bounds that state several are several views, and are averaged. */
export function eventsOf(bounds: readonly Bound[], graph: KnownGraph, grid: Grid): KnownEvents {
  const introduced: Range[] = [];
  const common: Range[] = [];
  const declining: Range[] = [];
  const gone: Range[] = [];
  let endIsPhysical = false;
  const cut = (a: number, b: number): Range => [clamp(Math.min(a, b), grid), clamp(Math.max(a, b), grid)];
  for (const bound of bounds) {
    if (bound.by === "fallback" || bound.by === "diffusion") {
      const [outer, inner] = [bound.outer[0]?.[0], bound.inner[0]?.[0]];
      if (outer !== undefined) introduced.push(cut(outer, inner ?? grid.to));
      continue;
    }
    for (const id of bound.claims) {
      const claim = graph.claimOf(id);
      if (!isDated(claim)) continue;
      const { existsFrom, until, states } = graph.yearsOf(claim);
      const begin = cut(existsFrom.outer, existsFrom.inner);
      const end = cut(until.inner.at(-1)?.[1] ?? grid.from, until.outer.at(-1)?.[1] ?? grid.from);
      const hasBegin = states === "begin" || states === "both";
      const hasEnd = states === "end" || states === "both";
      if (claim.relation === "introduced") introduced.push(begin);
      if (claim.relation === "common from") common.push(begin);
      if (claim.relation === "common until") declining.push(end);
      if (claim.relation === "discontinued") {
        gone.push(end);
        endIsPhysical ||= bound.hardness === "physical";
      }
      if (claim.relation === "current" && hasBegin) common.push(begin);
      if (claim.relation === "current" && hasEnd) declining.push(end);
    }
  }
  const [rises, noBegin] = slopes(introduced, common, RISE, RISE_BACK, ["introduced", "common"]);
  const [falls, noEnd] = slopes(declining, gone, FALL, FALL_BACK, ["declining", "gone"]);
  return { rises, falls, missing: [...noBegin, ...noEnd], endIsPhysical };
}

const isDated = (claim: Claim): claim is Dated =>
  ["introduced", "common from", "common until", "discontinued", "current"].includes(claim.relation);

const clamp = (year: number, { from, to }: Grid): number => Math.min(to, Math.max(from, year));
const shift = ([a, b]: Range, by: number): Range => [a + by, b + by];

/** All pairs of a first and a second event; where one kind is missing, the other moved by a usual distance. */
function slopes(
  firsts: readonly Range[],
  seconds: readonly Range[],
  on: number,
  back: number,
  [first, second]: readonly [Missing[number], Missing[number]],
): readonly [CurveEvents["rises"], Missing] {
  if (firsts.length === 0)
    return [seconds.map((range) => [shift(range, -back), range]), seconds.length > 0 ? [first] : []];
  if (seconds.length === 0) return [firsts.map((range) => [range, shift(range, on)]), [second]];
  return [firsts.flatMap((a) => seconds.map((b) => [a, b] as const)), []];
}
