import type { Datings } from "#server/domain/datings.ts";
import type { Piece } from "#server/domain/examination.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { datingsAskFor, readDatings } from "#server/use-cases/ask/find-datings.ts";
import { temporaryPath } from "#tests/support/temporary-store.ts";
import { type Bench, median, medians, type Ratio } from "./measure.ts";
import { bareRows } from "./scale/bare-rows.ts";
import { openMirrored, piecesOf, sizes, wishesOf } from "./scale/bench-graph.ts";
import { openBenchNeo4j } from "./scale/bench-neo4j.ts";
import { answerText, type DatingFinding, type DatingQuestion, inNumbers } from "./scale/dating-question.ts";
import { openQuestionInCypher } from "./scale/question-in-cypher.ts";
import { openQuestionInSql } from "./scale/question-in-sql.ts";
import { openQuestionOnArrays } from "./scale/question-on-arrays.ts";

const PIECES = 60;

const CLAIMS_A_TERM = 4;
const OURS = "the program, over its mirror";

type Answer = Datings | readonly DatingFinding[];
type Ask = (question: DatingQuestion) => Promise<Answer> | Answer;

/** All dating paths of a piece with their findings: by the program, in SQL and in Cypher, all with equal answers. */
export const bench: Bench = async () => {
  const ratios: Ratio[] = [];
  for (const claims of sizes("100000")) ratios.push(...(await askAt(claims)));
  return ratios;
};

async function askAt(claims: number): Promise<readonly Ratio[]> {
  const wishes = wishesOf(claims, CLAIMS_A_TERM);
  const pieces = piecesOf(wishes, PIECES);
  const questions = pieces.map((piece) => datingsAskFor(piece) as DatingQuestion);
  const { store, mirrored, mirror, close } = await openMirrored(wishes);
  const onArrays = openQuestionOnArrays(bareRows(wishes));
  const sql = openQuestionInSql(temporaryPath(), bareRows(wishes));
  const server = await openBenchNeo4j(wishes, "question");
  const cypher = server && (await openQuestionInCypher(server, () => bareRows(wishes)));
  const asks: Readonly<Record<string, Ask>> = {
    [OURS]: (question) => readDatings({ store: mirrored, datings: mirror }, question),
    "the program, over neighbourhoods of the mirror": (question) =>
      readDatings({ store: mirrored, datings: undefined }, question),
    "the program, over neighbourhoods of the SQLite store": (question) =>
      readDatings({ store, datings: undefined }, question),
    "a plain walk over arrays": onArrays,
    ...named("SQL", sql.ask),
    ...named("Cypher", cypher?.ask ?? {}),
  };
  try {
    const paths = await compare(asks, questions);
    console.log(`  ${claims} claims: ${paths} paths of a piece (median), the same in all ways`);
    const byPiece = Object.entries(asks).map(([name, ask]): [string, (n: number) => unknown] => [
      name,
      (n) => ask(questions[n] as DatingQuestion),
    ]);
    const cost = await medians<number, string>(
      questions.map((_, n) => n),
      { rounds: 5, warmUp: 10 },
      {
        ...Object.fromEntries(byPiece),
        "the whole report": (n) => examinePiece({ store: mirrored }, pieces[n] as Piece),
      },
    );
    for (const [name, ms] of Object.entries(cost)) console.log(`    ${ms.toFixed(2)} ms: ${name}`);
    return ["SQL", "Cypher"].flatMap((language): readonly Ratio[] => {
      const [best] = Object.entries(cost)
        .filter(([name]) => name.startsWith(language))
        .sort(([, a], [, b]) => a - b);
      if (best === undefined) return [];
      return [
        {
          ...{
            what: `all dating paths of a piece at ${claims} claims, ${OURS}`,
            against: `the best ${best[0]}`,
          },
          ...{ cost: cost[OURS] as number, costAgainst: best[1] },
          atMost: language === "SQL" ? 1 / 2 : 1 / 20,
        },
      ];
    });
  } finally {
    sql.close();
    await cypher?.close();
    await server?.stop();
    await close();
  }
}

const named = (language: string, asks: Readonly<Record<string, Ask>>): Readonly<Record<string, Ask>> =>
  Object.fromEntries(Object.entries(asks).map(([name, ask]) => [`${language}, ${name}`, ask]));

/** Throws unless all ways give the same paths and findings; gives the median number of paths. */
async function compare(
  asks: Readonly<Record<string, Ask>>,
  questions: readonly DatingQuestion[],
): Promise<number> {
  const counts: number[] = [];
  for (const [n, question] of questions.entries()) {
    const texts = new Map<string, string>();
    for (const [name, ask] of Object.entries(asks)) {
      const answer = await ask(question);
      if ("isCut" in answer && answer.isCut) throw new Error(`${name} was cut at piece ${n + 1}`);
      const findings = "features" in answer ? inNumbers(answer) : answer;
      texts.set(name, answerText(findings));
      if (name === OURS) counts.push(findings.reduce((sum, { paths }) => sum + paths.length, 0));
      if (texts.get(name) !== texts.get(OURS)) throw new Error(`${name} gives other paths of piece ${n + 1}`);
    }
  }
  return median(counts);
}
