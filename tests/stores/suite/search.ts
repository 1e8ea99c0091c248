import { beforeEach, describe, expect, it } from "vitest";
import type { Term } from "#server/domain/term.ts";
import type { Store, TermFilter } from "#server/ports/store.ts";
import { aCommit, adding, aTerm, replacing, withdrawing } from "#tests/support/build-change.ts";
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

/** Rule S13: finding terms by words. */
export function searchGroup(open: () => Promise<Store>): void {
  describe("search", () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      answered(await store.commit(aCommit(adding(...terms))));
    });
    const found = async (words: string, filter: TermFilter = {}, first = 10) =>
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
