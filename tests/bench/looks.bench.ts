import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Term } from "#server/domain/term.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import { weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { examine } from "#server/reasoning/examine.ts";
import { type KnownGraph, knowGraph } from "#server/reasoning/known-graph.ts";
import { candidatesOf } from "#server/reasoning/looks/candidates.ts";
import { readLooks } from "#server/reasoning/looks/read-looks.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { sayFigure } from "./figure.ts";
import { type Bench, medians } from "./measure.ts";

const PIECE = "examination.saltmarsh-chest";
/** Things recorded and weighed one by one instead. */
const RECORDED = 50;
const MOST_MS = 300;

/** The demonstration with most left to look for, and a graph that knows all the features looked for on it. */
async function prepare() {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  const store = openMemoryStore();
  await store.commit({ change: seed.change, by: "bench", at: seed.at, message: "bench" });
  const piece = seed.pieces.find((one) => one.id === PIECE)?.piece;
  if (piece === undefined) throw new Error(`no ${PIECE}`);
  const features = seed.change.flatMap((edit) =>
    edit.kind === "term" && edit.after?.kind === "feature" ? [edit.after] : [],
  );
  const ask = askFor(piece, ASSUMED);
  const report = examine(piece, await store.neighbourhood({ ...ask, at: 1 }));
  const seeds = [...new Set([...ask.seeds, ...features.map((feature) => feature.id)])];
  const graph = await store.neighbourhood({ ...ask, seeds, at: 1 });
  await store.close();
  return { piece, features, report, graph };
}

/** Weighs the piece anew for the first candidates, each recorded as seen. */
function weighEach(piece: Piece, features: readonly Term[], graph: KnownGraph, subject: Subject): number {
  let sum = 0;
  for (const { part, feature } of candidatesOf(subject, features).open.slice(0, RECORDED)) {
    const made = { id: id<"observation">("look"), part, feature, seen: "present", sureness: "sure" } as const;
    const found = readSubject({ ...piece, observations: [...piece.observations, made] }, graph, ASSUMED);
    sum += weighModel(modelReader(found, ASSUMED_ODDS)()).logEvidence;
  }
  return sum;
}

/** What to look at next over 1,200 candidates, from the neighbourhood to the list. */
export const bench: Bench = async () => {
  const { piece, features, report, graph } = await prepare();
  const look = () =>
    readLooks(readSubject(piece, knowGraph(graph, ASSUMED), ASSUMED), { features, report }, ASSUMED_ODDS);
  const { considered, next } = look();
  console.log(`  ${PIECE}: ${considered} looks weighed, ${next.length} told`);
  const times = await medians(
    [1],
    { rounds: 9, warmUp: 2 },
    {
      looks: look,
      weighed: () => {
        const known = knowGraph(graph, ASSUMED);
        return weighEach(piece, features, known, readSubject(piece, known, ASSUMED));
      },
    },
  );
  sayFigure({ what: `looks over ${considered} candidates`, value: times.looks, unit: "ms", atMost: MOST_MS });
  return [
    {
      what: `looks over ${considered} candidates`,
      against: `the piece weighed anew with each of ${RECORDED} recorded`,
      cost: times.looks,
      costAgainst: times.weighed,
      atMost: 1,
    },
  ];
};
