import { compareText } from "../../domain/compare.ts";
import type { Part } from "../../domain/examination.ts";
import type { TermId } from "../../domain/ids.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import { datePrior } from "./date-prior.ts";
import { groupReader } from "./group-reader.ts";
import type { Placed } from "./link-by-tool.ts";
import type { Case, Model } from "./model.ts";
import { type Placing, placingOf } from "./placing.ts";
import type { Given } from "./right-odds.ts";
import { worldsOf } from "./shared-claims.ts";

/** Reads models of one piece that differ in what is taken as right; groups that this does not touch are the same objects. */
export type ModelReader = (given?: Given) => Model;

const NOTHING_GIVEN: Given = new Map();

/** Reads a piece as a mixture over years, states, places and claims that may be wrong (docs/method.md). */
export function modelReader(
  subject: Subject,
  odds: AssumedOdds,
  placing: Placing = placingOf(subject, odds),
): ModelReader {
  const { graph, claimed, places } = subject;
  const looked = subject.checks.filter((check) => check.part !== undefined && check.seen !== "unseen");
  const groups = groupParts(subject).map((parts) => groupReader(parts, looked, subject, odds, placing));
  const first = looked.map((check) => placing.placedAt(check, 0));
  const used = first.map(({ check, currency }) => currency(check.feature).claims);
  const { worlds, tried, takenApart } = worldsOf(used, graph, odds);
  const prior = datePrior(odds.datePrior, placing.grid, claimed);
  const assumedShapes = shapesOf(first);
  const all = [...new Set(used.flatMap((claims) => [...claims]))].sort(compareText);
  return (taken = NOTHING_GIVEN) => ({
    ...placing.grid,
    prior,
    ...{ laterWork: odds.laterWork, reuseYears: odds.reuseYears },
    cases: worlds.flatMap(({ weight, given }) => {
      const assigned = new Map([...given, ...taken]);
      return places.map(
        (place, i): Case => ({
          ...{ place, weight: weight / places.length, given },
          groups: groups.map((readGroup) => readGroup(i, assigned)),
        }),
      );
    }),
    ...{ assumedShapes, tried, takenApart, used: all },
  });
}

/** The parts, those that are together as one, in the order of the piece. */
function groupParts({ piece, parts }: Subject): readonly (readonly Part[])[] {
  return [...Map.groupBy(piece.parts, ({ id }) => parts.groupOf(id)).values()];
}

function shapesOf(placed: readonly Placed[]): Dates["assumedShapes"] {
  const shapes = new Map<TermId, Dates["assumedShapes"][number]["missing"]>();
  for (const { check, currency } of placed)
    for (const [term, missing] of currency(check.feature).shapes) shapes.set(term, missing);
  return [...shapes]
    .map(([feature, missing]) => ({ feature, missing }))
    .sort((a, b) => (a.feature < b.feature ? -1 : 1));
}
