import { beforeEach, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import { readThrough } from "#server/ports/read-through.ts";
import type { ClaimFilter, PageAsk, Store, TermFilter } from "#server/ports/store.ts";
import { aCommit, adding, aSource, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { allRows } from "#tests/support/read-all.ts";

const terms = [
  aTerm("region.world"),
  aTerm("region.england", { broader: "region.world" }),
  aTerm("region.london", { broader: "region.england" }),
  aTerm("tool.saw"),
  aTerm("feature.mark"),
  aTerm("feature.arc", { broader: "feature.mark" }),
  aTerm("form.chest", { parts: ["part.drawer", "part.top"] }),
  aTerm("part.drawer"),
  aTerm("part.drawer-side", { broader: "part.drawer" }),
  aTerm("part.top"),
  aTerm("feature.tear", {
    parts: ["part.drawer-side"],
    note: 'Says "parts":["part.top"] in its note.',
    looking: {
      ...{ how: "Look.", move: "nothing", basis: "from memory" },
      mistakenFor: [{ what: "a saw", term: id("tool.saw"), apart: "By its edge." }],
    },
  }),
];
const published = [{ basis: "published", source: id<"source">("source.book"), locator: "p. 1" }] as const;
const claims = [
  aClaim({
    id: "claim.1",
    relation: "requires",
    subject: "feature.mark",
    ways: [["tool.saw"]],
    region: "region.england",
  }),
  aClaim({ id: "claim.2", relation: "introduced", subject: "tool.saw", when: "1790", citations: published }),
  aClaim({
    id: "claim.3",
    relation: "typical of",
    subject: "feature.arc",
    object: "form.chest",
    status: "proposed",
  }),
  aClaim({ id: "claim.4", relation: "void when", of: "claim.2", condition: "feature.arc" }),
  aClaim({
    id: "claim.5",
    relation: "void when",
    of: "claim.1",
    condition: "feature.mark",
    status: "rejected",
  }),
  aClaim({
    id: "claim.6",
    relation: "spread to",
    subject: "tool.saw",
    from: "region.england",
    to: "region.london",
    years: [1, 2],
  }),
  aClaim({
    id: "claim.7",
    relation: "confined to",
    subject: "feature.mark",
    regions: ["region.london"],
    form: "form.chest",
  }),
];
const sources = [aSource("source.book"), aSource("source.paper")];

async function idsOf(slices: AsyncIterable<readonly { readonly id: string }[]>): Promise<readonly string[]> {
  return (await readThrough(slices)).map((thing) => thing.id).sort();
}

/** Rules S4, S12 and S63: lists, their order, their pages and their filters. */
export function listGroup(open: () => Promise<Store>): void {
  describe("lists", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      answered(await store.commit(aCommit(adding(...terms, ...sources, ...claims))));
    });

    it("[S4] gives every row once, by id, whatever the size of a page", async () => {
      const sorted = terms.map((term) => term.id as string).sort();
      for (const first of [1, 2, 3, 7, 200]) {
        const rows = await allRows((page) => store.listTerms({}, page), first);
        expect(rows.map((term) => term.id)).toEqual(sorted);
      }
      expect((await allRows((page) => store.listClaims({}, page), 3)).map((claim) => claim.id)).toEqual(
        claims.map((claim) => claim.id),
      );
      expect(await allRows((page) => store.listSources(page), 1)).toEqual(sources);
    });

    it("[S4] says whether there is more, and how many there are in all", async () => {
      expect(await store.listClaims({}, { first: 7 })).toMatchObject({ hasMore: false, total: 7 });
      const page = await store.listClaims({}, { first: 6, after: "claim.1" });
      expect(page).toMatchObject({ hasMore: false, total: 7 });
      expect(page.cursors).toHaveLength(6);
      expect(await store.listClaims({}, { first: 5, after: "claim.1" })).toMatchObject({ hasMore: true });
    });

    it("[S4] sorts ids by the codes of their characters", async () => {
      const ids = ["tool.Z", "tool.a-b", "tool.a.b", "tool.a_b", "tool.a1", "tool.ab"];
      answered(await store.commit(aCommit(adding(...ids.map((name) => aTerm(name))))));
      const rows = await allRows((page) => store.listTerms({ kinds: ["tool"] }, page), 2);
      expect(rows.map((term) => term.id)).toEqual([...ids, "tool.saw"].sort());
    });

    it("[S4] takes pages of 1 to 200 rows only", async () => {
      for (const first of [0, -1, 201, 1.5, Number.NaN]) {
        const page: PageAsk = { first };
        await expect(store.listTerms({}, page)).rejects.toThrow(RangeError);
        await expect(store.revisions(page)).rejects.toThrow(RangeError);
        await expect(store.listExaminations(page)).rejects.toThrow(RangeError);
        await expect(store.search("saw", {}, first)).rejects.toThrow(RangeError);
      }
    });

    const termFilters: readonly (readonly [TermFilter, readonly string[]])[] = [
      [{ parts: [id("part.drawer")] }, ["form.chest"]],
      [{ parts: [id("part.drawer-side"), id("part.top")] }, ["feature.tear", "form.chest"]],
      [{ parts: [id("part.top")], kinds: ["feature"] }, []],
      [{ parts: [id("tool.saw")] }, []],
      [{ parts: [] }, []],
      [{ kinds: ["region"] }, ["region.england", "region.london", "region.world"]],
      [{ kinds: ["tool", "form"] }, ["form.chest", "tool.saw"]],
      [{ kinds: [] }, []],
      [{ broader: id("region.world") }, ["region.england"]],
      [{ broader: id("feature.mark"), kinds: ["region"] }, []],
      [{ broader: id("term.none") }, []],
    ];
    it.each(termFilters)("[S12] finds the terms of %j", async (filter, wanted) => {
      const page = await store.listTerms(filter, { first: 50 });
      expect(page.rows.map((term) => term.id)).toEqual(wanted);
      expect(page.total).toBe(wanted.length);
      expect(await idsOf(store.allTerms(filter))).toEqual(wanted);
    });

    const claimFilters: readonly (readonly [ClaimFilter, readonly string[]])[] = [
      [{ subject: id("tool.saw") }, ["claim.2", "claim.6"]],
      [{ naming: id("tool.saw") }, ["claim.1", "claim.2", "claim.6"]],
      [{ naming: id("tool.saw"), notAbout: id("tool.saw") }, ["claim.1"]],
      [{ notAbout: id("tool.saw"), relations: ["void when", "introduced"] }, ["claim.4", "claim.5"]],
      [{ naming: id("region.england") }, ["claim.1", "claim.6"]],
      [{ naming: id("region.london") }, ["claim.6", "claim.7"]],
      [{ naming: id("form.chest") }, ["claim.3", "claim.7"]],
      [{ naming: id("feature.arc") }, ["claim.3", "claim.4"]],
      [{ source: id("source.book") }, ["claim.2"]],
      [{ source: id("source.paper") }, []],
      [{ of: [id("claim.1"), id("claim.2")] }, ["claim.4", "claim.5"]],
      [{ of: [id("claim.2")] }, ["claim.4"]],
      [{ of: [] }, []],
      [{ relations: ["void when", "introduced"] }, ["claim.2", "claim.4", "claim.5"]],
      [{ relations: [] }, []],
      [{ naming: id("tool.saw"), relations: ["requires"] }, ["claim.1"]],
      [{ subject: id("tool.saw"), source: id("source.book") }, ["claim.2"]],
    ];
    it.each(claimFilters)("[S12] finds the claims of %j", async (filter, wanted) => {
      const page = await store.listClaims(filter, { first: 50 });
      expect(page.rows.map((claim) => claim.id)).toEqual(wanted);
      expect(page.total).toBe(wanted.length);
      expect((await allRows((ask) => store.listClaims(filter, ask), 1)).map((claim) => claim.id)).toEqual(
        wanted,
      );
      expect(await idsOf(store.allClaims(filter))).toEqual(wanted);
    });

    it("[S63] reads all through in slices as of one revision, while others write", async () => {
      const many = Array.from({ length: 2_100 }, (_, n) => aTerm(`style.${String(n).padStart(4, "0")}`));
      answered(await store.commit(aCommit(adding(...many))));
      const [first] = many as [(typeof many)[0]];
      const read: string[] = [];
      let slices = 0;
      for await (const slice of store.allTerms({ kinds: ["style"] })) {
        if (slices++ === 0)
          answered(
            await store.commit(
              aCommit([...replacing(first, { ...first, label: "other" }), ...adding(aTerm("style.x"))]),
            ),
          );
        read.push(...slice.map((term) => `${term.id} ${term.label}`));
      }
      expect(slices).toBeGreaterThan(1);
      expect(read.sort()).toEqual(many.map((term) => `${term.id} ${term.label}`));
      expect(await idsOf(store.allTerms({ kinds: ["style"] }, 1))).toEqual([]);
      expect(await idsOf(store.allTerms({ kinds: ["style"] }, 3))).toContain("style.x");
      await expect(idsOf(store.allClaims({}, 9))).rejects.toThrow(RangeError);
    });

    it("[S12] filters by what stood at the revision asked for", async () => {
      const [first] = claims;
      const moved = aClaim({
        id: "claim.1",
        relation: "requires",
        subject: "feature.arc",
        ways: [["tool.saw"]],
      });
      answered(await store.commit(aCommit(replacing(first as typeof moved, moved))));
      const of = async (subject: string, at?: number) =>
        (await store.listClaims({ subject: id(subject) }, { first: 9 }, at)).rows.map((claim) => claim.id);
      expect(await of("feature.mark", 1)).toEqual(["claim.1", "claim.7"]);
      expect(await of("feature.mark")).toEqual(["claim.7"]);
      expect(await of("feature.arc")).toEqual(["claim.1", "claim.3"]);
      expect((await store.listClaims({ naming: id("region.england") }, { first: 9 })).total).toBe(1);
    });

    it("[S64] knows how many rows a list has in all at every revision, and how many edits made it", async () => {
      const [claim, , , exception] = claims as [Claim, Claim, Claim, Claim];
      const tear = terms.find((term) => term.id === "feature.tear") as (typeof terms)[0];
      answered(await store.commit(aCommit(withdrawing(exception))));
      answered(await store.commit(aCommit([...withdrawing(tear), ...adding(aTerm("tool.axe"), exception)])));
      answered(await store.commit(aCommit(replacing(claim, { ...claim, strength: "tentative" }))));
      const totals = async (at?: number) => [
        (await store.listTerms({}, { first: 1 }, at)).total,
        (await store.listTerms({ kinds: ["tool", "feature", "tool"] }, { first: 1 }, at)).total,
        (await store.listTerms({ kinds: ["tool"] }, { first: 1 }, at)).total,
        (await store.listClaims({}, { first: 1 }, at)).total,
        (await store.listClaims({ relations: ["void when", "requires"] }, { first: 1 }, at)).total,
        (await store.listSources({ first: 1 }, at)).total,
      ];
      expect(await totals(0)).toEqual([0, 0, 0, 0, 0, 0]);
      expect(await totals(1)).toEqual([terms.length, 4, 1, 7, 3, 2]);
      expect(await totals(2)).toEqual([terms.length, 4, 1, 6, 2, 2]);
      expect(await totals(3)).toEqual([terms.length, 4, 2, 7, 3, 2]);
      expect(await totals()).toEqual(await totals(3));
      expect(await store.editCounts([3, 1, 9, 2, 4, 0, 1])).toEqual(
        new Map([
          [1, terms.length + sources.length + claims.length],
          [2, 1],
          [3, 3],
          [4, 1],
        ]),
      );
    });

    it("[S12] finds the few among very many that name the same", async () => {
      const many = Array.from({ length: 5_200 }, (_, n) =>
        aClaim({
          ...{ id: `claim.n${String(n).padStart(4, "0")}`, relation: "introduced", when: "1790" },
          ...{ subject: n % 2 === 0 ? "tool.saw" : "feature.mark", region: "region.world" },
          ...{ part: n % 1_300 === 7 ? "part.drawer" : "part.top" },
        }),
      );
      answered(await store.commit(aCommit(adding(...many))));
      const [first] = many as [Claim];
      answered(await store.commit(aCommit(withdrawing(first))));
      const page = await store.listClaims({ naming: id("region.world") }, { first: 3, after: "claim.n5195" });
      expect(page.rows.map((claim) => claim.id)).toEqual(many.slice(5_196, 5_199).map((claim) => claim.id));
      expect(page).toMatchObject({ hasMore: true, total: 5_199 });
      const others = { naming: id<"term">("region.world"), notAbout: id<"term">("tool.saw") };
      expect(await store.listClaims(others, { first: 1 })).toMatchObject({ total: 2_600, hasMore: true });
      expect((await store.listClaims({ ...others, relations: ["requires"] }, { first: 9 })).total).toBe(0);
      expect((await store.listClaims({ naming: id("region.world") }, { first: 9 }, 2)).total).toBe(5_200);
      expect(await idsOf(store.allClaims({ naming: id("part.drawer") }))).toHaveLength(4);
      expect(await idsOf(store.allClaims({ naming: id("region.world") }))).toHaveLength(5_199);
    });

    it("[S4] answers equal calls with equal values", async () => {
      const ask = async () => [
        await store.listClaims({ naming: id("tool.saw") }, { first: 2 }),
        await store.search("saw", {}, 5),
        await store.neighbourhood({ seeds: [id("feature.mark")], regions: [], maxDepth: 3 }),
      ];
      expect(await ask()).toEqual(await ask());
    });
  });
}
