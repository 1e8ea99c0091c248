import { afterEach, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openApi } from "#tests/support/open-api.ts";
import { openHttp, post } from "#tests/support/open-http.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const QUERY = `query Standing($since: Int) { examination(id: "examination.chest") { standing(since: $since) {
  revision upToDate changedSince { since claimCount claims { id } gone { id } headlineBefore lines { kind strip says before now } }
} } }`;
const sawn = aPiece({
  region: "region.england",
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});
const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;
const EARLIER = replacing(saw, { ...saw, when: "1740" } as Claim);
const chest = id<"examination">("examination.chest");

const closing: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

/** The standing after the changes, each made an hour after the one before and after the record. */
async function standingAfter(changes: readonly Change[], since?: number) {
  const api = await openApi([sawGraph]);
  closing.push(api.close);
  answered(await api.store.createExamination(chest, sawn, "2026-01-01T01:00:00.000Z"));
  for (const [n, change] of changes.entries())
    answered(await api.store.commit(aCommit(change, { at: `2026-01-01T0${n + 2}:00:00.000Z` })));
  const { data, errors } = await api.ask(QUERY, since === undefined ? {} : { since });
  expect(errors).toEqual([]);
  return data.examination.standing;
}

describe("how a stored examination stands", () => {
  it("[K9] names the claims that changed and says what is said otherwise, from what to what", async () => {
    const other = aClaim({
      ...{ id: "claim.other", relation: "attested", subject: "tool.circular-saw" },
      ...{ region: "region.london", when: "1745" },
    });
    const { changedSince } = await standingAfter([EARLIER, adding(other)]);
    expect(changedSince).toEqual({
      ...{ since: 1, claimCount: 2, gone: [], claims: [{ id: "claim.other" }, { id: "claim.saw" }] },
      headlineBefore: expect.stringContaining("cannot be of 1760 to 1775"),
      lines: [
        {
          ...{ kind: "FINDING", strip: "o1", says: "Round saw marks on the bottom" },
          ...{ before: "15 years too late", now: "agrees" },
        },
      ],
    });
  });

  it("[K9] names what is gone as well, and says so where nothing is said otherwise", async () => {
    const typical = sawGraph.find(({ after }) => after?.id === "claim.plain-saw")?.after as Claim;
    expect((await standingAfter([withdrawing(typical)])).changedSince).toEqual({
      ...{ since: 1, claimCount: 1, claims: [], gone: [{ id: "claim.plain-saw" }] },
      ...{ headlineBefore: null, lines: [] },
    });
  });

  it("[K9] has nothing to say where nothing was changed that is read", async () => {
    const renamed = sawGraph.find(({ after }) => after?.id === "tool.circular-saw")?.after;
    const change = replacing(renamed as never, { ...(renamed as object), label: "round saw" } as never);
    expect((await standingAfter([change, adding(aTerm("tool.adze"))])).changedSince).toBeNull();
  });

  it("[K9] goes by the revision that was looked at last, where that is later than the record", async () => {
    const other = aClaim({
      id: "claim.other",
      relation: "attested",
      subject: "tool.circular-saw",
      when: "1800",
    });
    expect((await standingAfter([EARLIER, adding(other)], 2)).changedSince).toMatchObject({
      ...{ since: 2, claims: [{ id: "claim.other" }], lines: [] },
    });
    expect((await standingAfter([EARLIER], 2)).changedSince).toBeNull();
    expect((await standingAfter([EARLIER], 0)).changedSince).toMatchObject({ since: 1 });
    expect((await standingAfter([EARLIER], 99)).changedSince).toBeNull();
  });

  it("[K9] says that a piece can no longer be examined", async () => {
    const moved = adding(aTerm("feature.other"));
    const marks = sawGraph.find(({ after }) => after?.id === "feature.round-saw-marks")?.after;
    const needs = sawGraph.find(({ after }) => after?.id === "claim.marks")?.after;
    const { changedSince } = await standingAfter([moved, withdrawing(needs as never, marks as never)]);
    expect(changedSince.lines).toEqual([
      {
        ...{ kind: "RECORD", strip: null, says: "The record as it stands" },
        ...{ before: "can be examined", now: "cannot be examined" },
      },
    ]);
  });

  it("[K5] is known to a running server, which follows what is written to its store", async () => {
    const http = await openHttp([sawGraph]);
    closing.push(http.stop);
    const ask = async (query: string) => JSON.parse((await post(http.url, { query })).text).data;
    const { createExamination } = await ask(
      `mutation { createExamination(piece: { title: "T", examined: 2026, attribution: { date: "1760" }, parts: [], observations: [] }) {
        ... on ExaminationChanged { examination { id } } } }`,
    );
    const { id } = createExamination.examination;
    await expect
      .poll(
        async () =>
          (await ask(`{ examination(id: "${id}") { standing { revision upToDate } } }`)).examination.standing,
      )
      .toEqual({ revision: 1, upToDate: true });
  });
});
