import { beforeEach, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Term } from "#server/domain/term.ts";
import type { SearchFilter, Store } from "#server/ports/store.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { answered } from "#tests/support/expect-answer.ts";

const terms = [
  aTerm("tool.circular-saw", { otherLabels: ["buzz saw"], note: "A toothed disc." }),
  aTerm("feature.circular-saw-mark", { note: "Arcs of one radius across the board." }),
  aTerm("tool.circular-log-saw", { otherLabels: ["circular saw for logs"], note: "A large circular saw." }),
  aTerm("tool.pit-saw", { note: "Worked by two, one of them below." }),
  aTerm("feature.dovetail", { note: "A joint of drawers; cut with a saw and a chisel." }),
  aTerm("form.ecritoire", { label: "Écritoire", otherLabels: ["writing box"] }),
  aTerm("tool.saw-b", { label: "saw" }),
  aTerm("tool.saw-a", { label: "Saw" }),
];

const confined = aClaim({
  ...{ id: "claim.confined", relation: "confined to", subject: "feature.lap" },
  regions: ["region.ireland"],
});
/** What searches are narrowed by; made-up dates. */
const placed = [
  aTerm("region.world"),
  ...["england", "france", "ireland"].map((region) => aTerm(`region.${region}`, { broader: "region.world" })),
  aTerm("region.london", { broader: "region.england" }),
  aTerm("part.drawer"),
  aTerm("part.drawer-bottom", { broader: "part.drawer" }),
  aTerm("part.drawer-side", { broader: "part.drawer" }),
  aTerm("form.chest", { parts: ["part.drawer"] }),
  aTerm("feature.arcs", { parts: ["part.drawer-bottom"] }),
  aTerm("feature.tear", { parts: ["part.drawer"] }),
  aTerm("feature.lap"),
  aClaim({
    ...{ id: "claim.arcs", relation: "introduced", subject: "feature.arcs" },
    ...{ region: "region.london", when: "1790" },
  }),
  aClaim({
    ...{ id: "claim.tear", relation: "current", subject: "feature.tear" },
    ...{ region: "region.world", when: "1840/.." },
  }),
  aClaim({ id: "claim.lap", relation: "current", subject: "feature.lap", when: "160X/1720" }),
  aClaim({
    ...{ id: "claim.lap-gone", relation: "not found in", subject: "feature.lap", when: "1850/1900" },
  }),
  aClaim({
    ...{ id: "claim.proposed", relation: "introduced", subject: "feature.lap", status: "proposed" },
    ...{ region: "region.london", when: "1795" },
  }),
  aClaim({
    ...{ id: "claim.spread", relation: "spread to", subject: "tool.pit-saw", years: [10, 20] },
    ...{ from: "region.france", to: "region.france" },
  }),
  confined,
];

/** Rules S13 and S40: finding terms by words. */
export function searchGroup(open: () => Promise<Store>): void {
  describe("search", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      answered(await store.commit(aCommit(adding(...terms))));
    });
    const found = async (words: string, filter: SearchFilter = {}, first = 10) =>
      (await store.search(words, filter, first)).map(({ term }) => term as string);

    it("[S13] puts a term labelled exactly so first, ties by id", async () => {
      expect((await found("saw")).slice(0, 2)).toEqual(["tool.saw-a", "tool.saw-b"]);
      expect((await found("circular saw"))[0]).toBe("tool.circular-saw");
      expect((await found("CIRCULAR  saw mark"))[0]).toBe("feature.circular-saw-mark");
    });

    it("[S13] puts a term also called so before those that hold the words elsewhere", async () => {
      expect((await found("buzz saw"))[0]).toBe("tool.circular-saw");
      expect((await found("writing box"))[0]).toBe("form.ecritoire");
    });

    it.each([
      ["circlar saw", "tool.circular-saw"],
      ["circuler saw", "tool.circular-saw"],
      ["dovtail", "feature.dovetail"],
      ["dovetial", "feature.dovetail"],
      ["circ saw", "tool.circular-saw"],
      ["ecritoire", "form.ecritoire"],
      ["ÉCRIT", "form.ecritoire"],
      ["pit-saw", "tool.pit-saw"],
    ])("[S13] forgives case, accents, short beginnings and small errors: %s", async (words, wanted) => {
      expect((await found(words))[0]).toBe(wanted);
    });

    it("[S13] gives the nearest of the wanted kind, whatever other kinds hold all the words", async () => {
      expect(await found("log saw circular", { kinds: ["feature"] })).toEqual([
        "feature.circular-saw-mark",
        "feature.dovetail",
      ]);
    });

    it("[S13] takes a word that some term holds for what it is, not for another it resembles", async () => {
      answered(
        await store.commit(
          aCommit(adding(aTerm("hardware.bail-handle"), aTerm("part.rail"), aTerm("part.bails"))),
        ),
      );
      expect(await found("bail")).toEqual(["hardware.bail-handle", "part.bails"]);
      expect(await found("baill")).toContain("hardware.bail-handle");
    });

    it("[S13] looks into notes, after labels", async () => {
      expect(await found("chisel")).toEqual(["feature.dovetail"]);
      expect((await found("saw")).at(-1)).toBe("feature.dovetail");
    });

    it("[S13] finds terms that hold some of the words only where none holds all", async () => {
      expect(await found("dovetail drawers")).toEqual(["feature.dovetail"]);
      expect(await found("dovetail zzzzzz")).toEqual(["feature.dovetail"]);
    });

    it("[S13] gives what the filter admits, as many as asked for, scores falling", async () => {
      expect(await found("saw", { kinds: ["feature"] })).toEqual([
        "feature.circular-saw-mark",
        "feature.dovetail",
      ]);
      expect(await found("saw", {}, 2)).toHaveLength(2);
      const scores = (await store.search("saw", {}, 10)).map(({ score }) => score);
      expect(scores).toEqual(scores.toSorted((a, b) => b - a));
    });

    it("[S13] finds nothing for no words, or words that nothing resembles", async () => {
      expect(await found("")).toEqual([]);
      expect(await found(" -!? ")).toEqual([]);
      expect(await found("xylophone")).toEqual([]);
    });

    describe("narrowed", () => {
      beforeEach(async () => {
        answered(await store.commit(aCommit(adding(...placed))));
      });

      it.each<[string, SearchFilter, readonly string[]]>([
        ["on the part itself", { part: id("part.drawer-bottom") }, ["feature.arcs", "feature.tear"]],
        ["on a part above", { part: id("part.drawer") }, ["feature.arcs", "feature.tear"]],
        ["on a part beside", { part: id("part.drawer-side") }, ["feature.tear"]],
        ["on a part that is not there", { part: id("part.nowhere") }, []],
      ])("[S40] by what is looked for %s, never by the parts of a form", async (_, filter, wanted) => {
        expect(await found("", filter)).toEqual(wanted);
      });

      it.each<[string, SearchFilter, readonly string[]]>([
        ["the region and one below", { region: id("region.england") }, ["feature.arcs", "feature.tear"]],
        ["one above", { region: id("region.london") }, ["feature.arcs", "feature.tear"]],
        ["the ends of a spread", { region: id("region.france") }, ["tool.pit-saw", "feature.tear"]],
        ["what it is confined to", { region: id("region.ireland") }, ["feature.lap", "feature.tear"]],
        ["no region that is not there", { region: id("region.nowhere") }, []],
      ])("[S40] by the regions of accepted claims: %s", async (_, filter, wanted) => {
        expect(await found("", filter)).toEqual(wanted);
      });

      it.each<[string, SearchFilter["years"], readonly string[]]>([
        ["an event", [1790, 1790], ["feature.arcs"]],
        ["the years before it", [1700, 1789], ["feature.lap"]],
        ["the outer years of a span", [1590, 1600], ["feature.lap"]],
        ["a span without end", [1850, Number.POSITIVE_INFINITY], ["feature.tear"]],
        ["no year", [1800, 1700], []],
        ["no year, within a span", [1900, 1860], []],
      ])("[S40] by the years of dated claims: %s", async (_, years = [0, 0], wanted) => {
        expect(await found("", { years })).toEqual(wanted);
      });

      it("[S40] takes region and years of one claim, and all else together", async () => {
        expect(await found("", { region: id("region.ireland"), years: [1600, 1700] })).toEqual([]);
        expect(await found("", { region: id("region.england"), years: [1790, 1800] })).toEqual([
          "feature.arcs",
        ]);
        expect(await found("tear", { region: id("region.england"), part: id("part.drawer") })).toEqual([
          "feature.tear",
        ]);
        expect(await found("tear", { region: id("region.england"), kinds: ["tool"] })).toEqual([]);
      });

      it("[S13] gives all by label where there are no words, as many as asked for", async () => {
        expect(await store.search("", { part: id("part.drawer") }, 1)).toEqual([
          { term: "feature.arcs", score: 0 },
        ]);
        expect(await found("  ", { part: id("part.drawer"), kinds: ["tool"] })).toEqual([]);
        expect(await found("", { kinds: ["feature"] })).toEqual([]);
        expect(await found("?!", { part: id("part.drawer") })).toEqual([]);
      });

      it("[S40] follows the newest revision of the claims", async () => {
        expect(await found("", { region: id("region.ireland") })).toEqual(["feature.lap", "feature.tear"]);
        answered(await store.commit(aCommit(withdrawing(confined))));
        expect(await found("", { region: id("region.ireland") })).toEqual(["feature.tear"]);
      });
    });

    it("[S13] follows the newest revision", async () => {
      const [circular, pit] = ["tool.circular-saw", "tool.pit-saw"].map((name) =>
        terms.find((term) => term.id === name),
      ) as [Term, Term];
      expect(await found("frame")).toEqual([]);
      answered(
        await store.commit(
          aCommit([
            ...replacing(pit, aTerm("tool.pit-saw", { label: "framed saw" })),
            ...withdrawing(circular),
          ]),
        ),
      );
      expect(await found("frame")).toEqual(["tool.pit-saw"]);
      expect(await found("pit")).toEqual([]);
      expect(await found("buzz saw")).not.toContain("tool.circular-saw");
    });
  });
}
