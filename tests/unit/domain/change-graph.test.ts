import { describe, expect, it } from "vitest";
import type { Change, Graph } from "#server/domain/change.ts";
import { applyChange, invertChange } from "#server/domain/change-graph.ts";
import { isProblem } from "#server/domain/problem.ts";
import { aGraph, alter, aSource, drop, put } from "#tests/support/build-graph.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";

const saw = aTerm("tool.saw", "tool");
const plane = aTerm("tool.plane", "tool");
const graph = aGraph([saw], [], [aSource("source.a")]);

function applied(to: Graph, change: Change): Graph {
  const after = applyChange(to, change);
  if (isProblem(after)) throw new Error(after.message);
  return after;
}

describe("[G13] an edit", () => {
  it("without a before is new, without an after is withdrawn, with both is changed", () => {
    const renamed = { ...saw, label: "a saw" };
    expect([...applied(graph, [put("term", plane)]).terms.keys()]).toEqual(["tool.saw", "tool.plane"]);
    expect([...applied(graph, [drop("term", saw)]).terms.keys()]).toEqual([]);
    expect(applied(graph, [alter("term", saw, renamed)]).terms.get("tool.saw")).toEqual(renamed);
    expect(applied(graph, [drop("source", aSource("source.a"))]).sources.size).toBe(0);
  });

  it("does not touch a thing of another kind with the same id", () => {
    const source = aSource("tool.saw");
    expect(applied(graph, [put("source", source)]).terms.get("tool.saw")).toEqual(saw);
  });
});

describe("[G22] an edit that does not fit what stands", () => {
  it.each([
    [
      "puts what stands already",
      [put("term", saw)],
      "The term tool.saw stands already; read the graph again",
    ],
    ["drops what is not there", [drop("term", plane)], "The term tool.plane is not as the change found it;"],
    [
      "changes what has changed",
      [alter("term", { ...saw, label: "old" }, { ...saw, label: "new" })],
      "The term tool.saw is not as the change found it;",
    ],
  ])("%s", (_, change, message) => {
    const refused = applyChange(graph, change);
    if (!isProblem(refused)) throw new Error("it was made");
    expect(refused).toMatchObject({ code: "STALE_CHANGE", path: [0] });
    expect(refused.message).toContain(message);
  });

  it("is found by its place, and nothing of the change is made", () => {
    const refused = applyChange(graph, [put("term", plane), drop("term", plane), drop("term", plane)]);
    expect(refused).toMatchObject({ code: "STALE_CHANGE", path: [2] });
    expect(graph.terms.size).toBe(1);
  });

  it("is no matter of the order in which fields were written", () => {
    const { id, kind, label } = saw;
    expect(isProblem(applyChange(graph, [drop("term", { label, kind, id })]))).toBe(false);
  });

  it("gives a thing another id", () => {
    expect(applyChange(graph, [alter("term", saw, plane)])).toMatchObject({
      code: "WRONG_FORMAT",
      path: [0],
    });
  });
});

it("[G23] edits that build on each other are taken back from the last to the first", () => {
  const change = [
    put("term", plane),
    alter("term", plane, { ...plane, label: "plane" }),
    alter("term", { ...plane, label: "plane" }, { ...plane, label: "smoothing plane" }),
  ];
  expect(applied(applied(graph, change), invertChange(change))).toEqual(graph);
});
