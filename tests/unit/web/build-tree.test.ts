import { describe, expect, it } from "vitest";
import { buildTree, type TreeNode } from "#web/evidence/build-tree.ts";

const term = (id: string, broader?: string) => ({ id, label: id, broader: broader ? { id: broader } : null });
const shown = (nodes: readonly TreeNode[]): unknown =>
  nodes.map(({ term: { id }, narrower }) => (narrower.length > 0 ? [id, shown(narrower)] : id));

describe("terms as a tree", () => {
  it("stand under their broader term, by label", () => {
    const terms = [
      term("wales", "britain"),
      term("britain"),
      term("london", "england"),
      term("england", "britain"),
    ];
    expect(shown(buildTree(terms))).toEqual([["britain", [["england", ["london"]], "wales"]]]);
  });

  it("stand at the top while their broader term has not been read", () => {
    expect(shown(buildTree([term("london", "england"), term("ireland")]))).toEqual(["ireland", "london"]);
  });
});
