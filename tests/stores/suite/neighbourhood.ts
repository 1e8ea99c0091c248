import fc from "fast-check";
import { beforeEach, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { Store } from "#server/ports/store.ts";
import { neighbourhoodByDefinition } from "#tests/oracles/neighbourhood-by-definition.ts";
import { anyAsk, anyHistory } from "#tests/support/any-history.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";

const terms = [
  aTerm("feature.mark", { broader: "feature.trace" }),
  aTerm("feature.trace"),
  aTerm("feature.gilding"),
  aTerm("tool.saw", { broader: "tool.any" }),
  aTerm("tool.any"),
  aTerm("practice.milling"),
  aTerm("material.steel"),
  aTerm("region.world"),
  aTerm("region.england", { broader: "region.world" }),
  aTerm("region.london", { broader: "region.england" }),
  aTerm("region.france", { broader: "region.world" }),
];
const needs = (name: string, subject: string, ways: string[][], rest: object = {}) =>
  aClaim({ id: name, relation: "requires", subject, ways, ...rest });
const chain = [
  needs("claim.1", "feature.mark", [["tool.saw"]]),
  needs("claim.2", "tool.saw", [["practice.milling"]]),
  needs("claim.3", "practice.milling", [["material.steel"]]),
  aClaim({
    id: "claim.4",
    relation: "introduced",
    subject: "material.steel",
    when: "1740",
    region: "region.france",
  }),
];

/** Rule S14: the neighbourhood of a piece. */
export function neighbourhoodGroup(open: () => Promise<Store>, runs: number): void {
  describe("neighbourhood", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    const hold = async (...claims: readonly Claim[]) =>
      answered(await store.commit(aCommit(adding(...terms, ...claims))));
    const walk = async ({
      seeds = ["feature.mark"],
      regions = [],
      maxDepth = 6,
      at,
    }: {
      seeds?: string[];
      regions?: string[];
      maxDepth?: number;
      at?: number;
    } = {}) => {
      const found = await store.neighbourhood({
        seeds: seeds as TermId[],
        regions: regions as TermId[],
        maxDepth,
        ...(at === undefined ? {} : { at }),
      });
      return {
        ...found,
        claims: found.claims.map((claim) => claim.id as string),
        terms: found.terms.map((term) => term.id as string),
        depths: Object.fromEntries(found.depths),
      };
    };

    it("[S14] follows what is required, and brings all claims of what it reaches", async () => {
      await hold(...chain);
      const found = await walk();
      expect(found.claims).toEqual(["claim.1", "claim.2", "claim.3", "claim.4"]);
      expect(found.depths).toEqual({
        "feature.mark": 0,
        "material.steel": 3,
        "practice.milling": 2,
        "tool.saw": 1,
      });
      expect(found.cutAt).toEqual([]);
      expect(found.revision).toBe(1);
    });

    it("[S14] brings what claims name, with all broader terms", async () => {
      await hold(...chain);
      expect((await walk()).terms).toEqual([
        "feature.mark",
        "feature.trace",
        "material.steel",
        "practice.milling",
        "region.france",
        "region.world",
        "tool.any",
        "tool.saw",
      ]);
    });

    it("[S14] stops at the depth asked for, with the claims there, and says where it was cut", async () => {
      await hold(...chain);
      const found = await walk({ maxDepth: 1 });
      expect(found.depths).toEqual({ "feature.mark": 0, "tool.saw": 1 });
      expect(found.claims).toEqual(["claim.1", "claim.2"]);
      expect(found.terms).toContain("practice.milling");
      expect(found.cutAt).toEqual(["tool.saw"]);
      expect((await walk({ maxDepth: 0 })).cutAt).toEqual(["feature.mark"]);
      expect((await walk({ maxDepth: 3 })).cutAt).toEqual([]);
    });

    it("[S14] is not cut where a term leads only to what was reached anyway", async () => {
      await hold(...chain, needs("claim.5", "material.steel", [["tool.saw"]]));
      expect((await walk({ maxDepth: 3 })).cutAt).toEqual([]);
    });

    it("[S14] walks cycles once, and takes the fewest hops", async () => {
      await hold(
        ...chain,
        needs("claim.5", "material.steel", [["feature.mark"]]),
        needs("claim.6", "feature.mark", [["practice.milling"], ["material.steel", "tool.saw"]]),
      );
      expect((await walk()).depths).toEqual({
        "feature.mark": 0,
        "material.steel": 1,
        "practice.milling": 1,
        "tool.saw": 1,
      });
    });

    it.each([
      [["region.england"], true],
      [["region.london"], true],
      [["region.world"], true],
      [["region.france"], false],
      [["region.france", "region.london"], true],
      [["region.none"], false],
      [[], true],
    ])("[S14] follows a claim of England when asked for %j: %s", async (regions, follows) => {
      await hold(
        needs("claim.1", "feature.mark", [["tool.saw"]], { region: "region.england" }),
        ...chain.slice(1),
      );
      const found = await walk({ regions: regions as string[] });
      expect(found.claims).toContain("claim.1");
      expect(found.terms).toContain("tool.saw");
      expect("tool.saw" in found.depths).toBe(follows);
      expect(found.claims.includes("claim.2")).toBe(follows);
    });

    it("[S14] brings dated claims of any region", async () => {
      await hold(...chain);
      expect((await walk({ regions: ["region.london"] })).claims).toContain("claim.4");
    });

    it("[S14] passes over claims that are not accepted, and seeds that are no terms", async () => {
      await hold(
        needs("claim.1", "feature.mark", [["tool.saw"]], { status: "proposed" }),
        needs("claim.2", "feature.mark", [["material.steel"]], { status: "rejected" }),
        needs("claim.3", "feature.mark", [["practice.milling"]]),
      );
      const found = await walk({ seeds: ["feature.none", "feature.mark", "feature.mark"] });
      expect(found.claims).toEqual(["claim.3"]);
      expect(found.depths).toEqual({ "feature.mark": 0, "practice.milling": 1 });
    });

    it("[S14] brings exceptions, their exceptions, and what they name", async () => {
      const except = (name: string, of: string, rest: object = {}) =>
        aClaim({ id: name, relation: "void when", of, condition: "feature.gilding", ...rest });
      await hold(
        ...chain,
        except("claim.x1", "claim.4"),
        except("claim.x2", "claim.x1"),
        except("claim.x3", "claim.2", { status: "rejected" }),
        except("claim.x4", "claim.x3"),
        needs("claim.9", "feature.trace", [["tool.saw"]]),
        except("claim.x9", "claim.9"),
      );
      const found = await walk();
      expect(found.claims).toEqual(["claim.1", "claim.2", "claim.3", "claim.4", "claim.x1", "claim.x2"]);
      expect(found.terms).toContain("feature.gilding");
      expect(found.depths).not.toHaveProperty("feature.gilding");
    });

    it("[S14] [S1] walks the graph as it stood", async () => {
      const [first] = chain as [Claim];
      const exception = aClaim({
        id: "claim.x",
        relation: "void when",
        of: "claim.1",
        condition: "feature.gilding",
      });
      await hold(...chain, exception);
      const other = needs("claim.1", "feature.mark", [["material.steel"]]);
      answered(await store.commit(aCommit(replacing(first, other))));
      const moved = aTerm("region.france", { broader: "region.england" });
      const france = terms.find((term) => term.id === moved.id) as typeof moved;
      answered(await store.commit(aCommit(replacing(france, moved))));
      expect((await walk({ at: 1 })).depths).toHaveProperty("practice.milling");
      expect((await walk({ at: 2 })).depths).toEqual({ "feature.mark": 0, "material.steel": 1 });
      expect((await walk()).claims).toEqual(["claim.1", "claim.4", "claim.x"]);
      expect((await walk({ at: 2 })).terms).not.toContain("region.england");
      expect((await walk()).terms).toContain("region.england");
      expect((await walk({ at: 0 })).terms).toEqual([]);
    });

    it("[S14] follows changes made after it was read", async () => {
      await hold(...chain);
      expect((await walk()).terms).toContain("tool.any");
      const saw = terms.find((term) => term.id === "tool.saw") as Term;
      const change = [
        ...replacing(saw, aTerm("tool.saw", { note: "Toothed." })),
        ...withdrawing(chain[3] as Claim),
      ];
      answered(await store.commit(aCommit(change)));
      const found = await store.neighbourhood({ seeds: [id("feature.mark")], regions: [], maxDepth: 6 });
      expect(found.terms).toContainEqual(aTerm("tool.saw", { note: "Toothed." }));
      expect(found.terms).not.toContainEqual(saw);
      expect((await walk()).claims).toEqual(["claim.1", "claim.2", "claim.3"]);
      expect((await walk()).terms).not.toContain("tool.any");
      expect((await walk({ at: 1 })).terms).toContain("tool.any");
    });

    it("[S14] is, on any graph at any revision, what its definition says", async () => {
      await fc.assert(
        fc.asyncProperty(
          anyHistory,
          fc.array(anyAsk, { minLength: 1, maxLength: 4 }),
          async (history, asks) => {
            const fresh = await open();
            for (const change of history.changes) answered(await fresh.commit(aCommit(change)));
            for (const [at, graph] of history.graphs.entries())
              for (const ask of asks) {
                const { revision, ...found } = await fresh.neighbourhood({ ...ask, at });
                expect(revision).toBe(at);
                expect(found).toEqual(neighbourhoodByDefinition(graph, ask));
                expect([...found.depths.keys()]).toEqual([...found.depths.keys()].sort());
              }
            expect(await fresh.verify()).toMatchObject({ revisions: history.changes.length });
            await fresh.close();
          },
        ),
        { numRuns: runs },
      );
    });

    it("[S14] names no term twice", async () => {
      await hold(...chain, needs("claim.5", "feature.mark", [["tool.saw", "tool.any"], ["tool.any"]]));
      const { terms: named } = await walk({ seeds: ["feature.mark", "tool.saw", id("tool.any")] });
      expect(named).toEqual([...new Set(named)]);
    });
  });
}
