import { afterEach, describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { WeighingJob } from "#server/domain/weighing/job.ts";
import type { Weigher } from "#server/ports/weigher.ts";
import { examine } from "#server/reasoning/examine.ts";
import { weigh } from "#server/reasoning/weigh.ts";
import { openWeigher } from "#server/weigher/open-weigher.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTerm, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

let weigher: Weigher | undefined;
afterEach(() => weigher?.close());

function aJob(): WeighingJob {
  const piece = aPiece({
    date: "1760/1775",
    observations: [{ id: "o1", part: "p1", feature: "feature.saw" }],
  });
  const claims = [aClaim({ id: "claim.saw", relation: "introduced", subject: "feature.saw", when: "1790" })];
  const neighbourhood = neighbourhoodOf([aTerm("region.world", "region")], claims);
  const { findings } = examine(piece, neighbourhood);
  return { piece, neighbourhood, assumptions: ASSUMED, report: { findings }, stages: ["dates", "weights"] };
}

describe("the weigher of worker threads", () => {
  it("gives one worker job after job, and each the answer that it has in this thread", async () => {
    weigher = openWeigher(1);
    const job = aJob();
    const wanted = weigh(job);
    for (let n = 0; n < 3; n++) expect(await weigher.weigh(job)).toEqual(wanted);
    expect(wanted.missing).toEqual([]);
  });

  it("answers a job that is stopped with what is missing, and goes on with the next", async () => {
    weigher = openWeigher(1);
    const job = aJob();
    const stopped = await weigher.weigh(job, AbortSignal.abort());
    expect(stopped.missing.map(({ stage }) => stage)).toEqual(["dates", "weights"]);
    const stop = new AbortController();
    const underWay = weigher.weigh(job, stop.signal);
    stop.abort();
    expect((await underWay).missing.every(({ why }) => why === "stopped")).toBe(true);
    expect(await weigher.weigh(job)).toEqual(weigh(job));
  });
});
