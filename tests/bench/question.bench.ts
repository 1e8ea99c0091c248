import { join } from "node:path";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { type Bench, medians, type Ratio } from "./measure.ts";
import { bareRows } from "./scale/bare-rows.ts";
import { dataFolderOf, piecesOf, sizes, wishesOf } from "./scale/bench-graph.ts";
import { openBenchNeo4j } from "./scale/bench-neo4j.ts";
import { answerText, askStore, type DatingFinding, questionOf } from "./scale/dating-question.ts";
import { openQuestionInCypher } from "./scale/question-in-cypher.ts";
import { openQuestionInSql } from "./scale/question-in-sql.ts";
import { openQuestionOnArrays } from "./scale/question-on-arrays.ts";

const PIECES = 60;

const CLAIMS_A_TERM = 4;

type Ask = (piece: number) => Promise<readonly DatingFinding[]> | readonly DatingFinding[];

/** All dating paths of a piece with their findings: in our way, in SQL and in Cypher, all with equal answers. */
export const bench: Bench = async () => {
  const ratios: Ratio[] = [];
  for (const claims of sizes("100000")) ratios.push(...(await askAt(claims)));
  return ratios;
};

async function askAt(claims: number): Promise<readonly Ratio[]> {
  const wishes = wishesOf(claims, CLAIMS_A_TERM);
  const pieces = piecesOf(wishes, PIECES);
  const questions = pieces.map(questionOf);
  const store = answered(
    await openSqliteStore(join(await dataFolderOf(wishes), "scribeline.sqlite"), { readOnly: true }),
  );
  const onArrays = openQuestionOnArrays(bareRows(wishes));
  const sql = openQuestionInSql(temporaryPath(), bareRows(wishes));
  const server = await openBenchNeo4j(wishes, "question");
  const cypher = server && (await openQuestionInCypher(server, () => bareRows(wishes)));
  const asks: Record<string, Ask> = {
    arrays: (n) => onArrays(questions[n] as (typeof questions)[number]),
    store: (n) => askStore(store, questions[n] as (typeof questions)[number]),
  };
  for (const [name, ask] of Object.entries(sql.ask))
    asks[`SQL, ${name}`] = (n) => ask(questions[n] as (typeof questions)[number]);
  for (const [name, ask] of Object.entries(cypher?.ask ?? {}))
    asks[`Cypher, ${name}`] = (n) => ask(questions[n] as (typeof questions)[number]);
  try {
    const paths = await compare(asks, pieces.length);
    console.log(
      `  ${claims} claims, ${CLAIMS_A_TERM} a term: ${paths} paths of a piece (median), equal in all ways`,
    );
    const numbers = pieces.map((_, n) => n);
    const whole = async (n: number): Promise<unknown> =>
      examinePiece({ store }, pieces[n] as (typeof pieces)[number]);
    const cost = await medians<number, string>(numbers, { rounds: 5, warmUp: 3 }, { ...asks, whole });
    for (const [name, ms] of Object.entries(cost)) console.log(`    ${ms.toFixed(2)} ms: ${name}`);
    const what = `all dating paths of a piece at ${claims} claims`;
    return ["SQL", "Cypher"].flatMap((language): readonly Ratio[] => {
      const [best] = Object.entries(cost)
        .filter(([name]) => name.startsWith(language))
        .sort(([, a], [, b]) => a - b);
      if (best === undefined) return [];
      const atMost = language === "SQL" ? 1 / 2 : 1 / 20;
      const against = `the best ${best[0]}`;
      return [{ what, against, cost: cost["arrays"] as number, costAgainst: best[1], atMost }];
    });
  } finally {
    sql.close();
    await cypher?.close();
    await server?.stop();
    await store.close();
  }
}

/** Throws unless all ways give the same paths and findings; gives the median number of paths. */
async function compare(asks: Readonly<Record<string, Ask>>, pieces: number): Promise<number> {
  const counts: number[] = [];
  for (let n = 0; n < pieces; n++) {
    const ours = (await asks["arrays"]?.(n)) ?? [];
    counts.push(ours.reduce((sum, { paths }) => sum + paths.length, 0));
    for (const [name, ask] of Object.entries(asks))
      if (answerText(await ask(n)) !== answerText(ours))
        throw new Error(`${name} gives other paths of piece ${n + 1}`);
  }
  return counts.sort((a, b) => a - b)[Math.floor(pieces / 2)] ?? Number.NaN;
}
