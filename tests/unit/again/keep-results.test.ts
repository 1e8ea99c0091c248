import { describe, expect, it } from "vitest";
import { keepResults } from "#server/again/keep-results.ts";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { Term } from "#server/domain/term.ts";
import { unweighed } from "#server/reasoning/weigh.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type Examined, examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { weighPiece } from "#server/use-cases/ask/weigh-piece.ts";
import { weighHere } from "#server/weigher/weigh-here.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const sawn = aPiece({
  ...{ date: "1760/1775", region: "region.england", form: "form.chest" },
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});
const things = new Map(sawGraph.map(({ after }) => [after?.id as string, after as Term | Claim]));
const term = (name: string) => things.get(name) as Term;
const claim = (name: string) => things.get(name) as Claim;

/** Examines a piece, makes a change, examines again (another piece if one is given): how the second answer came. */
async function askTwice(change: Change, second: Piece = sawn) {
  const store = openMemoryStore();
  const results = keepResults();
  const ask = async (piece: Piece) => (await examinePiece({ store, results }, piece)) as Examined;
  answered(await store.commit(aCommit(sawGraph)));
  const before = await ask(sawn);
  if (change.length > 0) answered(await store.commit(aCommit(change)));
  const after = await ask(second);
  const fresh = (await examinePiece({ store }, second)) as Examined;
  expect(canonicalJson(after)).toBe(canonicalJson(fresh));
  return { isHit: results.counts.hits === 1, before, after };
}

describe("a report that is kept", () => {
  it("[K1] [K2] is given again on a later revision that does not touch it, which it then names", async () => {
    const { isHit, before, after } = await askTwice(adding(aTerm("tool.adze")));
    expect(isHit).toBe(true);
    expect([before.report.revision, after.report.revision]).toEqual([1, 2]);
    expect({ ...after.report, revision: 1 }).toEqual(before.report);
  });

  it("[K1] is said in the words that stand now, where only a name was changed", async () => {
    const saw = term("tool.circular-saw");
    const { isHit, after } = await askTwice(replacing(saw, { ...saw, label: "round saw" }));
    expect(isHit).toBe(true);
    expect(JSON.stringify(after.words)).toContain("round saw");
  });

  it.each<[string, Change]>([
    ["a note", replacing(claim("claim.saw"), { ...claim("claim.saw"), note: "looked up again" })],
    ["a claim on what the piece does not reach", adding(intro("claim.other", "style.plain"))],
    ["a claim that is only proposed", adding(intro("claim.other", "tool.circular-saw", "proposed"))],
  ])("[K1] stands after %s", async (_, change) => {
    expect((await askTwice(change)).isHit).toBe(true);
  });

  it.each<[string, Change]>([
    ["a claim more", adding(intro("claim.other", "tool.circular-saw"))],
    ["a claim less", withdrawing(claim("claim.saw"))],
    ["another date", replacing(claim("claim.saw"), { ...claim("claim.saw"), when: "1750" } as Claim)],
    ["another strength", replacing(claim("claim.marks"), { ...claim("claim.marks"), strength: "certain" })],
    ["a claim rejected", replacing(claim("claim.saw"), { ...claim("claim.saw"), status: "rejected" })],
    [
      "another citation",
      replacing(claim("claim.saw"), { ...claim("claim.saw"), citations: [{ basis: "from memory" }] }),
    ],
    [
      "an exception",
      adding(
        aClaim({ id: "claim.x", relation: "void when", of: "claim.saw", condition: "feature.rough-ground" }),
      ),
    ],
    ["a region moved", replacing(term("region.england"), aTerm("region.england", { label: "England" }))],
  ])("[K1] is made anew after %s", async (_, change) => {
    expect((await askTwice(change)).isHit).toBe(false);
  });

  it("[K1] stands for a piece of another name, not for one of another date", async () => {
    expect((await askTwice([], { ...sawn, title: "Another name" })).isHit).toBe(true);
    const other = { ...sawn, attribution: { ...sawn.attribution, date: "1800" } };
    expect((await askTwice([], other)).isHit).toBe(false);
  });

  it("[K3] is forgotten when others were asked for since, so that memory stays bounded", async () => {
    const store = openMemoryStore();
    answered(await store.commit(aCommit(sawGraph)));
    const results = keepResults(4);
    const of = (year: number) => ({ ...sawn, attribution: { ...sawn.attribution, date: String(year) } });
    for (let year = 1700; year < 1720; year++) await examinePiece({ store, results }, of(year));
    await examinePiece({ store, results }, of(1700));
    expect(results.counts).toEqual({ hits: 0, misses: 21 });
    await examinePiece({ store, results }, of(1700));
    expect(results.counts.hits).toBe(1);
  });
});

describe("a weighing that is kept", () => {
  async function open() {
    const store = openMemoryStore();
    answered(await store.commit(aCommit(sawGraph)));
    let [asked, stops] = [0, false];
    const weigher: typeof weighHere = {
      ...weighHere,
      weigh: async (job) => {
        asked++;
        return stops ? unweighed(job) : weighHere.weigh(job);
      },
    };
    const results = keepResults();
    return {
      ...{ store, ask: () => weighPiece({ store, weigher, results }, sawn) },
      fresh: () => weighPiece({ store, weigher: weighHere }, sawn),
      asked: () => asked,
      stop: (stopping: boolean) => {
        stops = stopping;
      },
    };
  }

  it("[K2] is given again on a later revision that does not touch it", async () => {
    const { store, ask, fresh, asked } = await open();
    await ask();
    answered(await store.commit(aCommit(adding(aTerm("tool.adze")))));
    expect(canonicalJson(await ask())).toBe(canonicalJson(await fresh()));
    expect(asked()).toBe(1);
  });

  it("[K1] is made anew where something else could be looked for", async () => {
    const { store, ask, fresh, asked } = await open();
    await ask();
    const gesso = term("feature.gesso");
    const looked = aTerm(gesso.id, { label: gesso.label, parts: ["part.drawer-bottom"] });
    answered(await store.commit(aCommit(replacing(gesso, looked))));
    expect(canonicalJson(await ask())).toBe(canonicalJson(await fresh()));
    expect(asked()).toBe(2);
  });

  it("[K2] is not kept where it was stopped before its end", async () => {
    const { ask, fresh, asked, stop } = await open();
    stop(true);
    await ask();
    stop(false);
    expect(canonicalJson(await ask())).toBe(canonicalJson(await fresh()));
    expect(asked()).toBe(2);
  });
});

function intro(id: string, subject: string, status: "accepted" | "proposed" = "accepted"): Claim {
  return aClaim({ id, relation: "introduced", subject, when: "1700", status });
}
