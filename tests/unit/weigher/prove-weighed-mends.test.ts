import { describe, expect, it } from "vitest";
import { weigh } from "#server/reasoning/weigh.ts";
import { areProved, proveWeighedMends } from "#server/weigher/prove-weighed-mends.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { jobOf } from "#tests/support/weigh-sketch.ts";

const job = jobOf(
  [{ id: "a", relation: "introduced", subject: "arc", when: "1830" }],
  aPiece({ date: "1760/1770", observations: [{ id: "o1", part: "top", feature: "arc" }] }),
  ["mends"],
);

describe("[M9] mends that the search could not prove", () => {
  it("are proved by the solver, at the price that the search finds", async () => {
    const mends = weigh(job).mends;
    if (mends === undefined) throw new Error("there are no mends");
    expect(areProved(mends)).toBe(true);
    const cut = {
      possible: { ...mends.possible, proved: false, lowerBound: 0 },
      usual: { ...mends.usual, proved: false, lowerBound: 0 },
    };
    const proved = await proveWeighedMends(job, cut);
    expect(areProved(proved)).toBe(true);
    expect(proved.possible.best?.price).toBe(mends.possible.best?.price);
    expect(proved.possible.best?.givenUp).toEqual(mends.possible.best?.givenUp);
  });
});
