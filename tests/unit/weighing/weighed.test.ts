import { describe, expect, it } from "vitest";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Weighing } from "#server/domain/weighing/weighing.ts";
import { NOTHING_WEIGHED, withAnswer, withNothingFresh } from "#web/weighing/weighed.ts";
import { STEPS, stagesFrom } from "#web/weighing/weighing-steps.ts";

const [first, ranged, rivals] = STEPS as unknown as [(typeof STEPS)[0], (typeof STEPS)[0], (typeof STEPS)[0]];
const answer = (stages: Partial<Weighing>, headline?: string, missing: readonly string[] = []) => ({
  weighing: {
    ...{ format: "scribeline/weighing" as const, version: 1 as const, engine: "1", revision: 1 },
    ...{ odds: ASSUMED_ODDS, missing: [], ...stages },
  },
  words: { ...(headline === undefined ? {} : { headline }), missing },
  claims: [],
});
// Only which stages there are counts here.
const some = <Stage>(): Stage => ({}) as Stage;

describe("what is known of a weighing", () => {
  const dates = some<NonNullable<Weighing["dates"]>>();
  const sensitivity = some<NonNullable<Weighing["sensitivity"]>>();

  it("[Y3] keeps what was known and tells that it is old", () => {
    const known = withAnswer(NOTHING_WEIGHED, first, answer({ dates }, "plain"));
    expect(known.fresh.has("dates")).toBe(true);
    const old = withNothingFresh(known, "next");
    expect(old.words.headline).toBe("plain");
    expect(old.fresh.size).toBe(0);
  });

  it("[Y8] lets words with their ranges stand until new ones with ranges come", () => {
    const step1 = withAnswer(NOTHING_WEIGHED, first, answer({ dates }, "plain"));
    const step2 = withAnswer(step1, ranged, answer({ dates, sensitivity }, "with range"));
    expect(step2.words.headline).toBe("with range");
    const again = withAnswer(withNothingFresh(step2, "next"), first, answer({ dates }, "plain of another"));
    expect(again.words.headline).toBe("with range");
    expect(withAnswer(again, ranged, answer({ dates, sensitivity }, "new range")).words.headline).toBe(
      "new range",
    );
  });

  it("[Y2] tells what the server gave up by its own words, once", () => {
    const lost = withAnswer(NOTHING_WEIGHED, rivals, answer({}, undefined, ["Not worked out: the rivals."]));
    expect(lost.missing).toEqual(["Not worked out: the rivals."]);
    expect(lost.fresh.has("rivals")).toBe(false);
  });

  it("[Y2] names every stage that a stop leaves out", () => {
    expect(stagesFrom(2)).toEqual(["the rival stories", "what to look at next"]);
    expect(stagesFrom(0)).toHaveLength(7);
  });
});
