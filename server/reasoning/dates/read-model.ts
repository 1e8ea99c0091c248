import { compareText } from "../../domain/compare.ts";
import type { Part } from "../../domain/examination.ts";
import type { ClaimId, TermId } from "../../domain/ids.ts";
import type { Dates } from "../../domain/weighing/dates.ts";
import type { AssumedOdds } from "../../domain/weighing/odds.ts";
import type { Subject } from "../check.ts";
import { datePrior } from "./date-prior.ts";
import { factorsOf, type Placed } from "./factors-of.ts";
import type { Case, Group, Model } from "./model.ts";
import { type Placing, placingOf } from "./placing.ts";
import type { Given } from "./right-odds.ts";
import { worldsOf } from "./shared-claims.ts";
import { signFactors } from "./sign-factors.ts";
import { statePrior } from "./state-prior.ts";

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
  const { grid, placedAt } = placing;
  const groups = groupParts(subject);
  const looked = subject.checks.filter((check) => check.part !== undefined && check.seen !== "unseen");
  const first = looked.map((check) => placedAt(check, 0));
  const used = first.map(({ check, currency }) => currency(check.feature).claims);
  const { worlds, tried, takenApart } = worldsOf(used, graph, odds);
  const read = new Map<string, Group>();
  const groupAt = (parts: readonly Part[], place: number, given: Given): Group => {
    const names = new Set(parts.map(({ id }) => id));
    const placed = looked
      .filter(({ part }) => part !== undefined && names.has(part))
      .map((check) => placedAt(check, place));
    const key = [
      parts[0]?.id,
      ...placed.map(({ view }) => view.context.key),
      ...givenFor(placed, given),
    ].join("\n");
    const known = read.get(key) ?? {
      parts: parts.map(({ id }) => id),
      prior: statePrior(parts, odds, graph.broader),
      factors: [...names].flatMap((name) =>
        factorsOf(
          placed.filter(({ check }) => check.part === name),
          graph,
          odds,
          given,
        ),
      ),
      signs: signFactors(
        placed.map(({ check }) => check),
        graph,
        odds,
      ),
    };
    read.set(key, known);
    return known;
  };
  const prior = datePrior(odds.datePrior, grid, claimed);
  const assumedShapes = shapesOf(first);
  const all = [...new Set(used.flatMap((claims) => [...claims]))].sort(compareText);
  return (taken = NOTHING_GIVEN) => ({
    ...grid,
    prior,
    ...{ laterWork: odds.laterWork, reuseYears: odds.reuseYears },
    cases: places.flatMap((place, i) =>
      worlds.map(
        ({ weight, given }): Case => ({
          place,
          ...{ weight: weight / places.length, given },
          groups: groups.map((parts) => groupAt(parts, i, new Map([...given, ...taken]))),
        }),
      ),
    ),
    ...{ assumedShapes, tried, takenApart, used: all },
  });
}

/** The parts, those that are together as one, in the order of the piece. */
function groupParts({ piece, parts }: Subject): readonly (readonly Part[])[] {
  return [...Map.groupBy(piece.parts, ({ id }) => parts.groupOf(id)).values()];
}

/** What of the assignment a group can tell: two that differ in nothing else give one group. */
const givenFor = (placed: readonly Placed[], given: Given): readonly string[] => {
  const used = new Set<ClaimId>(placed.flatMap(({ check, currency }) => [...currency(check.feature).claims]));
  return [...given].filter(([id]) => used.has(id)).map(([id, is]) => `${id} ${is}`);
};

function shapesOf(placed: readonly Placed[]): Dates["assumedShapes"] {
  const shapes = new Map<TermId, Dates["assumedShapes"][number]["missing"]>();
  for (const { check, currency } of placed)
    for (const [term, missing] of currency(check.feature).shapes) shapes.set(term, missing);
  return [...shapes]
    .map(([feature, missing]) => ({ feature, missing }))
    .sort((a, b) => (a.feature < b.feature ? -1 : 1));
}
