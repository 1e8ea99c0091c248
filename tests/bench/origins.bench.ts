import { ASSUMED } from "#server/domain/assumptions.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { readOrigins } from "#server/reasoning/origins/read-origins.ts";
import { originsByClingo } from "#tests/oracles/clingo-origins.ts";
import { type AnyOrigins, anyOrigins, originsAsPiece } from "#tests/support/any-origins.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTerm, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { quantile, sayFigure } from "./figure.ts";
import { type Bench, medians } from "./measure.ts";

const PIECES = 12;

function subjectOf(drawn: AnyOrigins): Subject {
  const { piece, claims } = originsAsPiece(drawn);
  const terms = [
    aTerm("world", "region"),
    ...drawn.regions.map((region) => aTerm(region, "region", "world")),
  ];
  const graph = knowGraph(neighbourhoodOf(terms, claims.map(aClaim)), ASSUMED);
  return readSubject(aPiece(piece), graph, ASSUMED);
}

/** Origins of large pieces at several densities of parts recorded as separate; of small ones against clingo. */
export const bench: Bench = async () => {
  const random = randomSource(40);
  for (const separate of [0, 0.05, 0.2, 0.4]) {
    const like = { parts: 40, regions: 8, gapped: 0.3, confined: 0.5, separate, together: 0 };
    const times: number[] = [];
    let cut = 0;
    for (let n = 0; n < PIECES; n++) {
      const subject = subjectOf(anyOrigins(random, like));
      readOrigins(subject);
      const start = performance.now();
      cut += Number(readOrigins(subject).possible.cut);
      times.push(performance.now() - start);
    }
    const what = `origins of 40 parts in 8 regions, ${separate * 100} % of pairs separate, ${cut} of ${PIECES} cut`;
    sayFigure({ what: `${what}, median`, value: quantile(times, 0.5), unit: "ms" });
    sayFigure({ what: `${what}, worst`, value: quantile(times, 1), unit: "ms" });
  }
  const small = Array.from({ length: PIECES }, () =>
    anyOrigins(random, { parts: 9, regions: 3, gapped: 0.5, confined: 0.4, separate: 0.15, together: 0 }),
  );
  const subjects = small.map(subjectOf);
  const times = await medians(
    small.map((_, n) => n),
    { rounds: 3, warmUp: 1 },
    {
      ours: (n) => readOrigins(subjects[n] as Subject),
      clingo: (n) => originsByClingo(small[n] as AnyOrigins),
    },
  );
  return [
    {
      what: "origins of 9 parts with all forced pairs",
      against: "the count alone by clingo",
      cost: times.ours,
      costAgainst: times.clingo,
      atMost: 1,
    },
  ];
};
