import { describe, expect, it } from "vitest";
import { canonicalJson } from "#server/domain/canonical-json.ts";
import type { Change } from "#server/domain/change.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { type Examined, examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal, type Refusal } from "#server/use-cases/refusal.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

async function storeWith(...changes: readonly Change[]) {
  const store = openMemoryStore();
  for (const change of changes) {
    const revision = await store.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
    if (isProblem(revision)) throw new Error(revision.message);
  }
  return store;
}

const sawn = aPiece({
  ...{ date: "1760/1775", region: "region.england", form: "form.chest" },
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});

function answered(answer: Examined | Refusal): Examined {
  if (isRefusal(answer)) throw new Error(answer.refused[0].message);
  return answer;
}

describe("a piece examined", () => {
  it("gets a report that names the claims which speak against it", async () => {
    const { report, words } = answered(await examinePiece({ store: await storeWith(sawGraph) }, sawn));
    expect(report).toMatchObject({ format: "scribeline/report", version: 1, revision: 1, complete: true });
    const finding = report.findings.find(({ id }) => id === "o1");
    expect(finding).toMatchObject({
      ...{ label: "contradictory", hardness: "physical", direction: "late", gapYears: 15 },
      support: { claims: ["claim.marks", "claim.saw"] },
    });
    expect(report.ruleOuts).toMatchObject([{ hardness: "physical", against: "attribution" }]);
    expect(words.headline).not.toBe("");
    expect(words.findings.find(({ id }) => id === "o1")?.says).toContain("1790");
  });

  it("[A7] comes with every term and claim that the report names, and no other", async () => {
    const { report, terms, claims } = answered(
      await examinePiece({ store: await storeWith(sawGraph) }, sawn),
    );
    const text = canonicalJson(report);
    const termIds = terms.map((term) => term.id);
    expect(termIds).toEqual(termIds.toSorted());
    expect(termIds).toEqual(
      expect.arrayContaining([
        "feature.round-saw-marks",
        "form.chest",
        "region.england",
        "tool.circular-saw",
      ]),
    );
    expect(claims.map((claim) => claim.id)).toEqual(expect.arrayContaining(["claim.marks", "claim.saw"]));
    for (const { id } of [...terms, ...claims]) expect(text).toContain(id);
    expect(termIds).not.toContain("style.plain");
  });

  it("[A7] gets the same bytes each time", async () => {
    const [store, other] = [
      await storeWith(sawGraph),
      await storeWith(sawGraph.toReversed().toSorted(byKind)),
    ];
    const texts = [store, store, other].map(async (each) =>
      canonicalJson(answered(await examinePiece({ store: each }, sawn)).report),
    );
    const [first, ...rest] = await Promise.all(texts);
    expect(rest).toEqual([first, first]);
  });

  it("[A4] is examined on an earlier state of the graph where that is asked for", async () => {
    const later = sawGraph.filter((edit) => edit.after?.id === "claim.saw");
    const store = await storeWith(
      sawGraph.filter((edit) => edit.after?.id !== "claim.saw"),
      later,
    );
    const labels = [1, 2, undefined].map(async (revision) => {
      const { report } = answered(await examinePiece({ store }, sawn, revision));
      return [report.revision, report.findings.find(({ id }) => id === "o1")?.label];
    });
    expect(await Promise.all(labels)).toEqual([
      [1, "silent"],
      [2, "contradictory"],
      [2, "contradictory"],
    ]);
  });

  it.each([-1, 2, 1.5])("[A4] is refused on revision %d, which there is not", async (revision) => {
    expect(await examinePiece({ store: await storeWith(sawGraph) }, sawn, revision)).toMatchObject({
      refused: [{ code: "UNKNOWN_REVISION", path: ["revision"] }],
    });
  });

  it("is examined on an empty graph if it names nothing, and nothing is known of it", async () => {
    const { report } = answered(await examinePiece({ store: openMemoryStore() }, aPiece({ parts: ["top"] })));
    expect(report).toMatchObject({ revision: 0, findings: [], ruleOuts: [], signs: [] });
  });

  it("[A5] is refused on a graph that does not know its terms", async () => {
    const answer = await examinePiece({ store: openMemoryStore() }, sawn);
    if (!isRefusal(answer)) throw new Error("It was examined");
    expect(answer.refused.map(({ code }) => code)).toEqual(Array(4).fill("UNKNOWN_TERM"));
  });
});

/** Terms before sources before claims, each kind in the order it comes. */
function byKind(a: Change[number], b: Change[number]): number {
  const order = ["term", "source", "claim"];
  return order.indexOf(a.kind) - order.indexOf(b.kind);
}
