import type { Piece } from "#server/domain/examination.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { type LargeGraph, largeGraph } from "#tests/support/large-graph.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { type Bench, medians } from "./measure.ts";

const PARTS = 10;
const OBSERVATIONS = 30;
const PIECES = 6;

/**
 * Pieces of ten parts with three things seen on each, in a region without narrower ones. Their features are of the first
 * family, which the small graph and the large have alike but for a few more exceptions in the large.
 */
function somePieces({ features, leafRegions }: LargeGraph): readonly Piece[] {
  const random = randomSource(11);
  return Array.from({ length: PIECES }, () => {
    return aPiece({
      ...{ date: "1740/1780", region: random.pick(leafRegions) },
      parts: Array.from({ length: PARTS }, (_, n) => ({ id: `p${n}` })),
      observations: Array.from({ length: OBSERVATIONS }, (_, n) => ({
        ...{ id: `o${n}`, part: `p${n % PARTS}`, feature: random.pick(features[0] ?? []) },
      })),
    });
  });
}

async function openGraph(claims: number) {
  const graph = largeGraph(claims);
  const store = answered(await openSqliteStore(temporaryPath()));
  answered(await store.commit(aCommit(graph.change)));
  const examine = async (piece: Piece) => {
    const examined = await examinePiece({ store }, piece);
    if (isRefusal(examined)) throw new Error(examined.refused.map(({ message }) => message).join(" "));
    return examined.report;
  };
  return { pieces: somePieces(graph), examine, close: () => store.close() };
}

/** Examining a piece of 30 observations on 10 parts, from the read of its neighbourhood to the words, in two graphs. */
export const bench: Bench = async () => {
  const small = await openGraph(10_000);
  const large = await openGraph(100_000);
  for (const [claims, { pieces, examine }] of [
    ["10,000", small],
    ["100,000", large],
  ] as const) {
    const { neighbourhood, findings, ruleOuts } = await examine(pieces[0] as Piece);
    console.log(
      `  ${claims} claims: the first piece reaches ${neighbourhood.terms} terms and ${neighbourhood.claims} claims, has ${findings.length} findings and ${ruleOuts.length} rule-outs`,
    );
  }
  const rounds = Array.from({ length: PIECES }, (_, n) => n);
  const times = await medians(
    rounds,
    { rounds: 3, warmUp: 1 },
    {
      small: (n) => small.examine(small.pieces[n] as Piece),
      large: (n) => large.examine(large.pieces[n] as Piece),
    },
  );
  await small.close();
  await large.close();
  return [
    {
      what: "examining 30 observations on 10 parts at 100,000 claims",
      against: "the same at 10,000",
      cost: times.large,
      costAgainst: times.small,
      atMost: 1.5,
    },
  ];
};
