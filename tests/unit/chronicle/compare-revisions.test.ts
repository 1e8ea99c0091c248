import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import type { Change, Graph } from "#server/domain/change.ts";
import { applyChange } from "#server/domain/change-graph.ts";
import type { Claim } from "#server/domain/claim.ts";
import { netChange } from "#server/domain/net-change.ts";
import { personWrite } from "#server/domain/people/person.ts";
import type { Term } from "#server/domain/term.ts";
import { anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { openChronicle } from "#tests/support/open-chronicle.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const thing = (name: string) => sawGraph.find((edit) => edit.after?.id === name)?.after;
const claim = thing("claim.saw") as Claim;
const tool = thing("tool.circular-saw") as Term;
const later = { ...claim, when: "1795", strength: "firm" } as Claim;
const roundSaw = { ...tool, label: "round saw" };
const changes: readonly Change[] = [
  sawGraph,
  replacing(claim, later),
  replacing(tool, roundSaw),
  adding(aTerm("tool.adze")),
  replacing(later, claim),
  withdrawing(aTerm("tool.adze")),
];

const closing: (() => void)[] = [];
afterEach(() => {
  for (const close of closing.splice(0)) close();
});
const open = async (...made: Parameters<typeof openChronicle>) => {
  const chronicle = await openChronicle(...made);
  closing.push(chronicle.close);
  return chronicle;
};

describe("[I8] two revisions", () => {
  it("differ in words, thing by thing, in groups, named as on each side", async () => {
    const { ask } = await open(changes);
    const { groups, edits, from, to } = await ask("difference", { from: 4, to: 1 });
    expect([from, to]).toEqual([1, 4]);
    expect(groups).toEqual([
      { kind: "claim", does: "changed", count: 1 },
      { kind: "term", does: "added", count: 1 },
      { kind: "term", does: "changed", count: 1 },
    ]);
    expect(edits.map(({ id }: { id: string }) => id)).toEqual([
      "claim.saw",
      "tool.adze",
      "tool.circular-saw",
    ]);
    expect(edits[0]).toMatchObject({
      says: expect.stringMatching(/^Round saw: introduced in England, 1795/),
      differences: [{ what: "date", before: "1790", after: "1795" }, { what: "strength" }],
    });
  });

  it("do not differ in what is again as it was, whatever lay between", async () => {
    const { ask } = await open(changes);
    const { groups } = await ask("difference", { from: 1, to: 6 });
    expect(groups).toEqual([{ kind: "term", does: "changed", count: 1 }]);
    expect(await ask("difference", { from: 3, to: 3 })).toMatchObject({ groups: [], edits: [], after: 0 });
  });

  it("are told some at a time", async () => {
    const many = Array.from({ length: 120 }, (_, n) => aTerm(`tool.t${String(n).padStart(3, "0")}`));
    const { ask } = await open([adding(...many)]);
    const [first, last] = [
      await ask("difference", { from: 0, to: 1 }),
      await ask("difference", { from: 0, to: 1, skip: 100 }),
    ];
    expect([first.edits.length, first.before, first.after]).toEqual([50, 0, 70]);
    expect([last.edits.length, last.before, last.after]).toEqual([20, 100, 0]);
    expect(last.edits.at(-1).id).toBe("tool.t119");
    expect((await ask("difference", { from: 0, to: 1, skip: 999 })).edits).toEqual([]);
  });

  it("are refused where there is no such revision", async () => {
    const { ask } = await open(changes);
    for (const asked of [
      { from: 0, to: 7 },
      { from: -1, to: 2 },
    ])
      expect(await ask("difference", asked)).toMatchObject({ refused: [{ code: "UNKNOWN_REVISION" }] });
    expect(await ask("difference", { from: "1", to: 2 })).toMatchObject({
      refused: [{ code: "WRONG_FORMAT" }],
    });
  });

  it("differ by one change that leads from the first graph to the second, in any history", () => {
    fc.assert(
      fc.property(anyHistory, fc.nat(9), fc.nat(9), ({ changes: made, graphs }, a, b) => {
        const [from, to] = [a % graphs.length, b % graphs.length].sort((x, y) => x - y) as [number, number];
        const net = netChange(made.slice(from, to));
        const reached = applyEach(graphs[from] as Graph, net);
        expect(reached).toEqual(graphs[to]);
        for (const edit of net) expect(edit.before).not.toEqual(edit.after);
      }),
      { numRuns: 300 },
    );
  });
});

/** Puts each edit in its place, whatever the order of what they name. */
function applyEach(graph: Graph, change: Change): Graph {
  if (change.length === 0) return graph;
  const applied = applyChange(graph, change);
  if ("problem" in applied) throw new Error(applied.message);
  return applied;
}

describe("[I8] the list of revisions", () => {
  it("tells newest first who, when and why, persons by name and former members as such", async () => {
    const { ask, store } = await open([sawGraph]);
    const deed = { by: "person.ada", at: "2026-02-01T00:00:00.000Z", did: "join" };
    const ada = { name: "Ada", role: "owner", state: "active" } as const;
    answered(await store.writeCards({ deed, cards: [personWrite("person.ada", 0, ada)] }));
    answered(await store.commit(aCommit(adding(aTerm("tool.adze")), { by: "person.ada", message: "Adze" })));
    answered(await store.commit(aCommit(adding(aTerm("tool.axe")), { by: "person.gone" })));
    const { revisions, total } = await ask("history");
    expect(total).toBe(3);
    expect(revisions).toMatchObject([
      { number: 3, name: "a former member", edits: 1 },
      { number: 2, name: "Ada", message: "Adze" },
      { number: 1, name: "test", message: "change 1", edits: sawGraph.length },
    ]);
  });
});
