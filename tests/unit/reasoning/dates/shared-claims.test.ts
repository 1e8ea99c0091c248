import { describe, expect, it } from "vitest";
import type { Citations } from "#server/domain/claim.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { worldsOf } from "#server/reasoning/dates/shared-claims.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { subjectOf } from "#tests/support/weigh-sketch.ts";

const from = (source: string): Citations => [{ basis: "published", source, locator: "p. 1" }] as never;
const claim = (id: string, more: Partial<ClaimSketch> = {}): ClaimSketch => ({
  ...{ id, relation: "introduced", subject: `of ${id}`, when: "1700" },
  ...more,
});

function worlds(claims: readonly ClaimSketch[], used: readonly (readonly string[])[], most = 3) {
  const { graph } = subjectOf(claims, {});
  const sets = used.map((ids) => new Set(ids)) as never;
  return worldsOf(sets, graph, { ...ASSUMED_ODDS, worlds: most });
}

describe("[B6] what several things seen share", () => {
  it("is nothing where each rests on claims of its own: one world", () => {
    const found = worlds([claim("a"), claim("b")], [["a"], ["b"]]);
    expect(found).toMatchObject({ tried: [], takenApart: [] });
    expect(found.worlds.map(({ weight }) => weight)).toEqual([1]);
  });

  it("is tried right and wrong, by how sure the claim is", () => {
    const found = worlds([claim("a", { strength: "tentative" })], [["a"], ["a"]]);
    expect(found.tried).toEqual(["a"]);
    expect(found.worlds.map(({ weight, given }) => [weight, given.get("a" as never)])).toEqual([
      [0.8, 1],
      [expect.closeTo(0.2, 12), 0],
    ]);
  });

  it("is taken in order: the most shared, the least sure, then by id; what is left over is taken apart", () => {
    const claims = [claim("a"), claim("b"), claim("c", { strength: "tentative" }), claim("d"), claim("e")];
    const used = [["a", "b", "c", "d"], ["a", "b", "c", "d"], ["d"], ["e"]];
    const found = worlds(claims, used);
    expect(found.tried).toEqual(["d", "c", "a"]);
    expect(found.takenApart).toEqual(["b"]);
    expect(found.worlds).toHaveLength(8);
    expect(found.worlds.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it("is a source as well, which takes all its claims with it", () => {
    const citations = from("source.book");
    const claims = [claim("a", { citations }), claim("b", { citations, strength: "tentative" }), claim("c")];
    const { tried, takenApart, worlds: both } = worlds(claims, [["a"], ["b"], ["c"]]);
    expect(tried).toEqual(["source.book"]);
    expect(takenApart).toEqual([]);
    expect(both.map(({ given }) => [...given.values()])).toEqual([
      [1, 1],
      [0, 0],
    ]);
    expect(both[0]?.weight).toBeCloseTo(0.8, 12);
  });

  it("is no source that stands beside another", () => {
    const citations = [...from("source.book"), ...from("source.other")] as unknown as Citations;
    expect(worlds([claim("a", { citations }), claim("b", { citations })], [["a"], ["b"]]).tried).toEqual([]);
  });

  it("is not tried twice: a claim of a source that is tried goes with it", () => {
    const citations = from("source.book");
    const claims = [claim("a", { citations }), claim("b", { citations })];
    expect(worlds(claims, [["a"], ["a"], ["b"]])).toMatchObject({ tried: ["source.book"], takenApart: [] });
  });

  it("is not tried at all where that is not asked for", () => {
    expect(worlds([claim("a")], [["a"], ["a"]], 0)).toMatchObject({ tried: [], takenApart: ["a"] });
  });
});
