import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { keepResults } from "#server/again/keep-results.ts";
import type { Claim } from "#server/domain/claim.ts";
import { findDiffering } from "#server/domain/find-differing.ts";
import { id } from "#server/domain/ids.ts";
import type { Role } from "#server/domain/people/caller.ts";
import { readKeptReport } from "#server/formats/read-sealed.ts";
import type { Store } from "#server/ports/store.ts";
import { openSeals } from "#server/proof/open-seals.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type ExaminedAgain, examineAgain } from "#server/use-cases/chronicle/examine-again.ts";
import { keepReport } from "#server/use-cases/chronicle/keep-report.ts";
import { findKeptReport, listKeptReports } from "#server/use-cases/chronicle/list-kept-reports.ts";
import { isRefusal, type Refusal } from "#server/use-cases/refusal.ts";
import { aCommit, replacing } from "#tests/support/build-change.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-reports-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
const now = () => new Date(Date.UTC(2026, 10, 25, 10, 0, count++)).toISOString();
const seals = openSeals(folder, now);
const chest = id<"examination">("examination.chest");
const sawn = aPiece({
  region: "region.england",
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});
const saw = sawGraph.find(({ after }) => after?.id === "claim.saw")?.after as Claim;

const made = <Answer extends object>(answer: Answer | Refusal): Answer => {
  if (isRefusal(answer)) throw new Error(answer.refused[0].message);
  return answer;
};

describe("a signed report", () => {
  let store: Store;
  const as = (role: Role = "contributor") => ({
    ...{ store, seals, now, newSuffix: () => `s${count++}`, results: keepResults() },
    caller: { id: `person.${role}`, role, via: "session" as const },
  });
  const signed = async () => {
    const listed = made(await keepReport(as(), chest));
    return { listed, kept: made(await findKeptReport(as(), listed.id)) };
  };
  beforeEach(async () => {
    store = openMemoryStore();
    answered(await store.commit(aCommit(sawGraph)));
    answered(await store.createExamination(chest, sawn, now()));
  });

  it("[I5] names revision and hash, who and when, is of its form, and is listed with its digest", async () => {
    const { listed, kept } = await signed();
    const newest = await store.newestRevision();
    expect(kept).toMatchObject({
      ...{ examination: chest, record: 1, revision: 1, hash: newest?.hash, by: "person.contributor" },
      report: { revision: 1, format: "scribeline/report" },
    });
    expect(readKeptReport(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
    expect(made(await listKeptReports(as("reader"), chest)).reports).toEqual([listed]);
    expect(listed).toMatchObject({ title: sawn.title, engine: kept.report.engine });
    expect(await keepReport(as("reader"), chest)).toMatchObject({ refused: [{ code: "NOT_ALLOWED" }] });
    expect(await keepReport(as(), id("examination.none"))).toMatchObject({
      refused: [{ code: "UNKNOWN_EXAMINATION" }],
    });
    answered(await store.verify());
  });

  it("[I6] is the same bytes on its revision, whatever the graph has become", async () => {
    const { listed, kept } = await signed();
    answered(await store.commit(aCommit(replacing(saw, { ...saw, when: "1740" } as Claim))));
    answered(await store.changeExamination(chest, 1, aPiece(), now()));
    const again = made<ExaminedAgain>(await examineAgain(as(), kept));
    expect(again).toMatchObject({ isSame: true, differences: [], before: listed.sha256, now: listed.sha256 });
    expect((await signed()).listed.sha256).not.toBe(listed.sha256);
  });

  it("[I6] that says something else than is found now is told place by place", async () => {
    const { kept } = await signed();
    const { house: _, keys: __, signature: ___, ...fields } = kept;
    const [first, ...findings] = kept.report.findings;
    const report = {
      ...kept.report,
      engine: "an older engine",
      findings: [{ ...first, years: "other" }, ...findings],
    };
    const other = await seals.seal({ ...fields, report: report as unknown as typeof kept.report });
    const again = made<ExaminedAgain>(await examineAgain(as(), other));
    expect(again.isSame).toBe(false);
    expect(again.differences.map(({ at }) => at).sort()).toEqual(["/engine", "/findings/0/years"]);
    expect(again.says).toMatch(/2 places differ\. It was made by an older engine, and this is /);
  });

  it("[I6] that was changed, or is of another history, is refused", async () => {
    const { kept } = await signed();
    const code = async (value: typeof kept) => {
      const again = await examineAgain(as(), value);
      return isRefusal(again) ? again.refused[0].code : "answered";
    };
    expect(await code({ ...kept, record: 2 })).toBe("BROKEN_SEAL");
    store = openMemoryStore();
    expect(await code(kept)).toBe("OTHER_HISTORY");
    answered(await store.commit(aCommit(sawGraph, { message: "another" })));
    expect(await code(kept)).toBe("OTHER_HISTORY");
  });

  it.each([
    [{ a: [1, { b: 2 }] }, { a: [1, { b: 3 }] }, [{ at: "/a/1/b", before: "2", after: "3" }]],
    [{ "a/~": 1 }, {}, [{ at: "/a~1~0", before: "1" }]],
    [[1], [1, 2], [{ at: "/1", after: "2" }]],
    [{ a: [] }, { a: {} }, [{ at: "/a", before: "[]", after: "{}" }]],
    [{ a: 1, b: 2 }, { b: 2, a: 1 }, []],
    [1, null, [{ at: "", before: "1", after: "null" }]],
  ])("[I6] tells places by pointers: %j to %j", (before, after, places) => {
    expect(findDiffering(before, after, 9)).toEqual(places);
  });
});
