import { readdirSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import { readBySchema } from "#server/formats/read-by-schema.ts";
import { readPiece } from "#server/formats/read-piece.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { type ExaminedHere, openSeedExaminer, seedChange } from "#tests/support/seed-examiner.ts";
import { turnPiece } from "#web/answers/turn-piece.ts";
import { findDrawing } from "#web/drawings/find-drawing.ts";
import { findAnswer, isRight, wholeOf } from "#web/learn/judge-choice.ts";
import type { Lesson } from "#web/learn/lesson.ts";
import { LESSONS, pieceOfLesson } from "#web/learn/lessons.ts";
import lessonSchema from "../../docs/formats/lesson.schema.json" with { type: "json" };

const readLesson = readBySchema<Lesson>(lessonSchema);
const files = readdirSync("seed-data/lessons");
const fileOf = (id: string): unknown => JSON.parse(readFileSync(`seed-data/lessons/${id}.json`, "utf8"));

let examine: Awaited<ReturnType<typeof openSeedExaminer>>;
let terms: ReadonlySet<string>;
let pieces: readonly string[];

beforeAll(async () => {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  terms = new Set(
    seed.change.filter(({ kind }) => kind === "term").map(({ after }) => (after as { id: string }).id),
  );
  pieces = seed.pieces.map(({ id }) => id);
  examine = await openSeedExaminer(seed.change);
});

/** What stands above or in the strips of a lesson: marks and sentences. */
const told = ({ words, groups }: ExaminedHere, lesson: Lesson): string =>
  JSON.stringify([
    words.headline,
    groups
      .flatMap((group) => group.rows)
      .filter((row) => lesson.shows.includes(row.id))
      .map((row) => [row.mark, row.says, row.signs.map((sign) => [sign.says, sign.isSetAside])]),
  ]);

describe("the lessons as files", () => {
  it("[L5] are all offered, once, under the name of their file", () => {
    expect(LESSONS.map(({ id }) => `${id}.json`).sort()).toEqual(files.sort());
    expect(LESSONS.length).toBeGreaterThanOrEqual(8);
  });

  it("[L5] stand together by subject", () => {
    const subjects = LESSONS.map(({ subject }) => subject);
    const runs = subjects.filter((subject, at) => subject !== subjects[at - 1]);
    expect(runs).toEqual([...new Set(subjects)]);
  });

  describe.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))("%s", (id, lesson) => {
    it("[L5] is of its form, its piece too", () => {
      expect(readLesson(fileOf(id))).toHaveProperty("id", id);
      if (lesson.piece) expect(readPiece(lesson.piece)).toHaveProperty("invented", true);
      else expect(pieces).toContain(lesson.demonstration);
    });

    it("[L5] names nothing that is not there, and draws only what has a drawing", () => {
      const drawn = [
        ...lesson.look.map(({ term }) => term),
        ...lesson.choices.flatMap(({ drawing }) => drawing ?? []),
      ];
      const voiding = lesson.choices.flatMap(({ holds }) =>
        holds.flatMap((condition) => ("voidedBy" in condition ? condition.voidedBy : [])),
      );
      expect([...drawn, ...voiding].filter((term) => !terms.has(term))).toEqual([]);
      expect(drawn.filter((term) => findDrawing(term as never) === undefined)).toEqual([]);
      const piece = pieceOfLesson(lesson);
      const seen: readonly string[] = piece.observations.map((each) => each.id);
      const parts: readonly string[] = piece.parts.map((each) => each.id);
      const conditions = lesson.choices.flatMap(({ holds }) => holds);
      const observations = conditions.flatMap((one) => ("observation" in one ? one.observation : []));
      expect([...lesson.shows, ...observations].filter((each) => !seen.includes(each))).toEqual([]);
      expect(lesson.asks.filter((each) => !lesson.shows.includes(each))).toEqual([]);
      expect(
        conditions.flatMap((one) => ("part" in one ? one.part : [])).filter((each) => !parts.includes(each)),
      ).toEqual([]);
    });

    it("[L6] has one right choice by the engine, and it is the one it was written for", async () => {
      const examined = await examine(pieceOfLesson(lesson));
      expect(lesson.choices.filter((choice) => isRight(choice, examined)).map((choice) => choice.id)).toEqual(
        [lesson.answer],
      );
      expect(findAnswer(lesson, examined)?.id).toBe(lesson.answer);
    });

    it("[L7] can be turned, and something comes of it", async () => {
      const piece = pieceOfLesson(lesson);
      const before = told(await examine(piece), lesson);
      const after = await Promise.all(
        (lesson.turns ?? []).map(async ({ change }) => told(await examine(turnPiece(piece, change)), lesson)),
      );
      expect(after.length).toBeGreaterThan(0);
      expect(after.filter((each) => each !== before).length).toBeGreaterThan(0);
    });
  });
});

describe("the lessons together", () => {
  it("[L9] have honest pieces and open questions among them", () => {
    const rightOf = (lesson: Lesson) => lesson.choices.find(({ id }) => id === lesson.answer)?.holds ?? [];
    const innocent = LESSONS.filter((lesson) =>
      rightOf(lesson).some(
        (one) =>
          ("mark" in one && (one.mark === "sign-set-aside" || one.disputed === true)) ||
          ("whole" in one && one.whole === "does-not-discriminate"),
      ),
    );
    expect(innocent.length / LESSONS.length).toBeGreaterThanOrEqual(1 / 3);
  });

  it("[L8] name an innocent cause, one at the least each", () => {
    const without = LESSONS.filter(
      ({ choices, keep }) =>
        !/innocent cause|what else could|habit|narrow drawers|changed more often|honest piece/i.test(
          [...choices.map(({ because }) => because), keep].join(" "),
        ),
    );
    expect(without.map(({ id }) => id)).toEqual([]);
  });

  it("[L6] judge a whole piece as its headline does", async () => {
    const starts = {
      "cannot-be": /cannot be of/,
      unusual: /^Nothing rules .* would be unusual for those years/,
      "does-not-discriminate": /^The evidence does not discriminate/,
      "nothing-against": /^Nothing recorded rules/,
    } as const;
    const met = new Set<string>();
    for (const lesson of LESSONS) {
      const piece = pieceOfLesson(lesson);
      for (const change of [{}, ...(lesson.turns ?? []).map((turn) => turn.change)]) {
        const { report, words } = await examine(turnPiece(piece, change));
        const whole = wholeOf(report);
        met.add(whole);
        expect(words.headline, lesson.id).toMatch(starts[whole]);
      }
    }
    expect(met.size).toBe(4);
  });

  it("[L6] are judged anew on a graph that says otherwise", async () => {
    const lesson = LESSONS.find(({ id }) => id === "grain-of-the-bottom") as Lesson;
    const elsewhere = await openSeedExaminer(await seedChange(["claim.C10"]));
    const examined = await elsewhere(pieceOfLesson(lesson));
    expect(findAnswer(lesson, examined)).toBeUndefined();
    expect(lesson.choices.filter((choice) => isRight(choice, examined)).map(({ id }) => id)).toEqual([
      "nothing",
    ]);
  });
});
