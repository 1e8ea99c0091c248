import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { shareOut } from "#server/use-cases/ask/around/choose-neighbours.ts";
import { linkId } from "#server/use-cases/ask/around/link.ts";
import { readAround } from "#server/use-cases/ask/around/read-around.ts";
import { aroundGraph } from "#tests/support/around-graph.ts";

async function around(named: string, steps: 1 | 2 = 1, each = 8) {
  const store = openMemoryStore();
  const revision = await store.commit({
    change: aroundGraph,
    by: "test",
    at: "2026-01-01T00:00:00Z",
    message: "test",
  });
  if (isProblem(revision)) throw new Error(revision.message);
  const centre = (await store.terms([id<"term">(named)])).get(id(named));
  if (!centre) throw new Error(`no ${named}`);
  return readAround({ store }, centre, { steps, each });
}
const names = ({ members }: Awaited<ReturnType<typeof around>>) => members.map(({ term }) => term);

describe("[A60] what stands around a term", () => {
  it("is what its claims name, the claims that name it, exceptions, and the tree, by group", async () => {
    const { members } = await around("tool.mill");
    const groups = new Set(
      members.slice(1).map(({ reach }) => `${reach?.isOutgoing ? "" : "<"}${reach?.kind}`),
    );
    expect([...groups]).toEqual([
      "requires",
      "<requires",
      "typical of",
      "<void when",
      "broader",
      "<broader",
      "dated in",
    ]);
    expect(names({ members } as never).slice(0, 2)).toEqual(["tool.mill", "tool.wheel"]);
    expect(members.some(({ term }) => term === "form.chest")).toBe(false);
  });

  it("shows of a group those that most claims speak of, in the order of their first years, and tells the rest", async () => {
    const read = await around("tool.mill", 1, 3);
    const needed = read.members.filter(({ reach }) => reach?.kind === "requires" && !reach.isOutgoing);
    expect(needed.map(({ term }) => term)).toEqual(["feature.mark-07", "feature.mark-01", "feature.mark-00"]);
    expect(read.leftOut.map(({ kind, isOutgoing, terms }) => [kind, isOutgoing, terms.length])).toEqual([
      ["requires", false, 9],
    ]);
  });

  it("counts a term that is joined twice once, and keeps both links", async () => {
    const { members, links } = await around("tool.mill");
    expect(new Set(members.map(({ term }) => term)).size).toBe(members.length);
    const link = links.find((each) => linkId(each) === "feature.mark-07 requires tool.mill");
    expect(link?.claims.map(({ id: claim }) => claim)).toEqual(["claim.mark-07", "claim.mark-again"]);
    expect(link?.hardness).toBe("physical");
    const between = links.find((each) => linkId(each) === "feature.mark-01 typical of style.plain");
    expect(between?.hardness).toBeUndefined();
    expect(links.find((each) => linkId(each) === "feature.mark-01 requires tool.mill")?.hardness).toBe(
      "practice",
    );
    expect(links.find((each) => linkId(each) === "tool.mill broader tool.machine")?.claims).toEqual([]);
  });

  it("walks a second step over what dates and what is of a kind, never twice to one term", async () => {
    const read = await around("tool.mill", 2, 12);
    const board = read.members.find(({ term }) => term === "material.board");
    expect(board).toMatchObject({
      step: 2,
      reach: { from: "feature.mark-03", kind: "requires", isOutgoing: false },
    });
    const all = names(read);
    expect(new Set(all).size).toBe(all.length);
    expect(all.indexOf(id("material.board"))).toBe(all.indexOf(id("feature.mark-03")) + 1);
    expect(all).not.toContain("part.back");
    expect(all).not.toContain("region.world");
  });

  it("has the dated claims of each, the earliest first; around a region its own first", async () => {
    const datesOf = async (named: string) =>
      (await around(named, 1, 12)).members
        .find(({ term }) => term === "feature.mark-07")
        ?.dated.map(({ id: claim }) => claim);
    expect(await datesOf("tool.mill")).toEqual(["claim.dated-there", "claim.dated-here"]);
    expect(await datesOf("region.here")).toEqual(["claim.dated-here", "claim.dated-there"]);
  });

  it("of a kind of part has what is looked for on it and the forms that have it", async () => {
    const { members } = await around("part.back");
    expect(members.map(({ term, reach }) => [term, reach?.kind])).toEqual([
      ["part.back", undefined],
      ["feature.mark-03", "looked for on"],
      ["form.chest", "has part"],
      ["feature.mark-07", "said of"],
    ]);
  });
});

describe("[A60] the share of a group", () => {
  it("starves none for another and never goes over", () => {
    expect(shareOut([100, 2, 5], 8, 60)).toEqual([8, 2, 5]);
    expect(shareOut([100, 2, 5], 8, 6)).toEqual([2, 2, 2]);
    expect(shareOut([100, 1, 5], 8, 7)).toEqual([3, 1, 3]);
    expect(shareOut([100, 1], 8, 0)).toEqual([0, 0]);
  });
});
