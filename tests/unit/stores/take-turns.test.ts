import { expect, it } from "vitest";
import { TOO_LATE } from "#server/ports/in-time.ts";
import { takeTurns } from "#server/stores/neo4j/take-turns.ts";

const limits = { patience: 1_000, longest: 1_000 };
const never = (): Promise<never> => new Promise(() => {});

it("[T5] one piece of work after the other, also after one that failed", async () => {
  const turns = takeTurns();
  const order: string[] = [];
  const work = (name: string) => async () => {
    order.push(`${name} begins`);
    await new Promise((resolve) => setTimeout(resolve, 5));
    order.push(`${name} ends`);
    if (name === "a") throw new Error("a fails");
    return name;
  };
  const answers = await Promise.allSettled([turns.take(work("a"), limits), turns.take(work("b"), limits)]);
  expect(answers.map(({ status }) => status)).toEqual(["rejected", "fulfilled"]);
  expect(order).toEqual(["a begins", "a ends", "b begins", "b ends"]);
});

it("[T5] work that does not end is given up, told so, and the next begins", async () => {
  const turns = takeTurns();
  let isGivenUp: () => boolean = () => false;
  const hangs = turns.take(
    (told) => {
      isGivenUp = told;
      return never();
    },
    { patience: 1_000, longest: 10 },
  );
  const next = turns.take(async () => "next", limits);
  expect(await hangs).toBe(TOO_LATE);
  expect(isGivenUp()).toBe(true);
  expect(await next).toBe("next");
});

it("[T5] who has waited too long for its turn is not begun, and those behind it keep theirs", async () => {
  const turns = takeTurns();
  let end: () => void = () => {};
  const first = turns.take(() => new Promise<void>((resolve) => (end = resolve)), limits);
  let isBegun = false;
  const impatient = turns.take(
    async () => {
      isBegun = true;
    },
    { patience: 10, longest: 1_000 },
  );
  const patient = turns.take(async () => "patient", limits);
  expect(await impatient).toBe(TOO_LATE);
  end();
  expect(await patient).toBe("patient");
  await first;
  await turns.ended();
  expect(isBegun).toBe(false);
});
