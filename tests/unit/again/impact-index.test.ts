import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openImpactIndex } from "#server/again/impact-index.ts";
import { openPostings } from "#server/again/postings.ts";
import { touchOf } from "#server/again/touch-of.ts";
import type { ExaminationId, TermId } from "#server/domain/ids.ts";
import { adding, aTerm, replacing } from "#tests/support/build-change.ts";
import { aClaim } from "#tests/support/build-claim.ts";

const terms = fc.uniqueArray(fc.nat(12).map((n) => `tool.t${n}` as TermId));
const anyPut = fc.record({
  examination: fc.nat(6).map((n) => `examination.e${n}` as ExaminationId),
  reads: fc.option(fc.record({ visited: terms, beside: terms }), { nil: undefined, freq: 4 }),
});

describe("the index of what was read", () => {
  it("[K4] finds by each term who visited or read it, whatever was put in and dropped before", () => {
    fc.assert(
      fc.property(fc.array(anyPut, { maxLength: 30 }), terms, terms, (puts, subjects, named) => {
        const index = openImpactIndex();
        const model = new Map<ExaminationId, { visited: TermId[]; beside: TermId[] }>();
        for (const { examination, reads } of puts) {
          if (reads) index.put(examination, reads);
          else index.drop(examination);
          if (reads) model.set(examination, reads);
          else model.delete(examination);
        }
        const expected = [...model].filter(
          ([, { visited, beside }]) =>
            subjects.some((term) => visited.includes(term)) ||
            named.some((term) => visited.includes(term) || beside.includes(term)),
        );
        const found = index.touchedBy({ subjects: new Set(subjects), terms: new Set(named) });
        expect([...found].sort()).toEqual(expected.map(([id]) => id).sort());
        expect(index.size().examinations).toBe(model.size);
      }),
    );
  });

  it("keeps numbers in order, each once", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(30), fc.boolean())), (steps) => {
        const postings = openPostings();
        const model = new Set<number>();
        for (const [number, adds] of steps) {
          postings[adds ? "add" : "remove"](number);
          model[adds ? "add" : "delete"](number);
        }
        expect([...postings.all()]).toEqual([...model].sort((a, b) => a - b));
      }),
    );
  });
});

describe("what a change can touch", () => {
  const claim = aClaim({ id: "claim.a", relation: "introduced", subject: "tool.a", when: "1700" });
  const none = async () => [];

  it("[K4] is nothing for names, notes and what is not accepted", async () => {
    const saw = aTerm("tool.a");
    const change = [
      ...replacing(saw, { ...saw, label: "another" }),
      ...replacing(claim, { ...claim, note: "a note" }),
      ...adding({ ...claim, id: "claim.b" as typeof claim.id, status: "proposed" }),
    ];
    const touch = await touchOf(change, none);
    expect([...touch.subjects, ...touch.terms]).toEqual([]);
  });

  it("[K4] is the subject of a claim, before and after", async () => {
    const moved = aClaim({ id: "claim.a", relation: "introduced", subject: "tool.b", when: "1700" });
    expect([...(await touchOf(replacing(claim, moved), none)).subjects]).toEqual(["tool.a", "tool.b"]);
  });

  it("[K4] is for an exception of an exception the subject of the first claim", async () => {
    const except = (id: string, of: string) =>
      aClaim({ id, relation: "void when", of, condition: "feature.x" });
    const standing = [claim, except("claim.x", "claim.a")];
    const touch = await touchOf(adding(except("claim.y", "claim.x")), async (ids) =>
      standing.filter(({ id }) => ids.includes(id)),
    );
    expect([...touch.subjects]).toEqual(["tool.a"]);
  });
});
