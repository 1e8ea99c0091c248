import { ASSUMED } from "#server/domain/assumptions.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { readSubject, type Subject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { ruleOut } from "#server/reasoning/rule-outs/rule-out.ts";
import { manyWindows } from "#tests/support/many-windows.ts";
import { sayFigure } from "./figure.ts";
import { type Bench, medians } from "./measure.ts";

const PIECES = 20;
const LARGE = { parts: 40, windows: 200, claims: 120, violating: 0.1 };

/** Pieces whose windows have been found: only what clashes is left to find. */
function subjects(gapped: number): readonly Subject[] {
  const random = randomSource(7);
  return Array.from({ length: PIECES }, () => {
    const { piece, neighbourhood } = manyWindows(random, { ...LARGE, gapped });
    const subject = readSubject(piece, knowGraph(neighbourhood, ASSUMED), ASSUMED);
    ruleOut(subject);
    return subject;
  });
}

/** Rule-outs of large pieces, a tenth of whose windows miss the claimed years; with gaps in windows against without. */
export const bench: Bench = async () => {
  const [plain, gapped] = [subjects(0), subjects(0.05)];
  const times = await medians(
    Array.from({ length: PIECES }, (_, n) => n),
    { rounds: 3, warmUp: 1 },
    {
      plain: (n) => ruleOut(plain[n] as Subject),
      gapped: (n) => ruleOut(gapped[n] as Subject),
    },
  );
  const counts = gapped.map((subject) => ruleOut(subject).ruleOutCount.count).sort((a, b) => a - b);
  console.log(`  with gaps: ${counts[0]} to ${counts.at(-1)} rule-outs a piece`);
  for (const [what, value] of [
    ["without gaps", times.plain],
    ["with gaps", times.gapped],
  ] as const)
    sayFigure({ what: `rule-outs of 200 windows on 40 parts ${what}`, value, unit: "ms", atMost: 30 });
  return [
    {
      what: "rule-outs of 200 windows on 40 parts, one in twenty with a gap",
      against: "the same without gaps",
      cost: times.gapped,
      costAgainst: times.plain,
      atMost: 2,
    },
  ];
};
