import { readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { ask, readingOf } from "./ask-graph.ts";
import type { Line, Reading, Role } from "./read-works.ts";

/** Years before the stated beginning at which a piece is dated well before. */
export const WELL_BEFORE = 30;

/** What the graph says of a line, and whether the work and the graph can both be right. */
export interface Judgement {
  readonly reading: Reading;
  readonly agrees: boolean;
}

const DENIES: Readonly<Record<Role, readonly Reading[]>> = {
  existed: ["cannot be"],
  "in use": ["cannot be", "unusual"],
  "not before": ["consistent", "silent"],
};

/**
 * existed: a piece of the stated date is not called impossible. in use: the usual years overlap the span, and neither of its stated ends is
 * called impossible. not before: a piece dated `WELL_BEFORE` years earlier is contradicted.
 */
export async function judgeLine(store: Store, line: Line): Promise<Judgement> {
  const asked = line.role === "not before" ? yearWellBefore(line.states) : line.states;
  const reading = readingOf(await ask(store, line, asked));
  const ends = line.role === "in use" ? line.states.split("/").filter((end) => end !== "..") : [];
  const atEnds = await Promise.all(ends.map(async (end) => readingOf(await ask(store, line, end))));
  return { reading, agrees: !DENIES[line.role].includes(reading) && !atEnds.includes("cannot be") };
}

function yearWellBefore(states: string): string {
  const dating = readDating(states, "event");
  if (isProblem(dating)) throw new Error(dating.message);
  return String(dating.begin[0] - WELL_BEFORE);
}
