import { describe, expect, it } from "vitest";
import { isProblem } from "#server/domain/problem.ts";
import { readTables } from "#server/seed/read-tables.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { SAW_MEASURES } from "#tests/support/saw-measures.ts";

const open = () => openApi([sawGraph], undefined, undefined, SAW_MEASURES);

describe("reference rows", () => {
  it("[A40] stand on their term, each a number, a range or words, with what they rest on", async () => {
    const { ask } = await open();
    const { data, errors } = await ask(`{
      term(id: "tool.circular-saw") {
        referenceRows {
          id table quantity number from to words unit strength note
          region { label } form { id } part { id }
          citations { basis locator source { id } }
        }
      }
      other: term(id: "form.chest") { referenceRows { id } }
    }`);
    expect(errors).toEqual([]);
    const [london, memory, pitch, rule] = data.term.referenceRows;
    expect(london).toEqual({
      ...{ id: "saw-marks.blade-london", table: "saw-marks", quantity: "diameter of the blade" },
      ...{ number: 760, from: null, to: null, words: null, unit: "mm", strength: "FIRM", note: null },
      ...{ region: { label: "London" }, form: null, part: null },
      citations: [{ basis: "PUBLISHED", locator: "p. 31", source: { id: "source.saw-book" } }],
    });
    expect(memory).toMatchObject({
      number: 900,
      strength: "TENTATIVE",
      note: "Of one mill only.",
      region: null,
    });
    expect(pitch).toMatchObject({
      number: null,
      from: 1.5,
      to: 4,
      citations: [{ basis: "COMMON_PRACTICE" }],
    });
    expect(rule).toMatchObject({ number: null, words: "c²/8h + h/2", unit: null });
    expect(data.other.referenceRows).toEqual([]);
  });

  it("[A40] name a source that the revision does not have as none, and keep the place in it", async () => {
    const { ask } = await open();
    const { data, errors } = await ask(
      `{ term(id: "tool.circular-saw") { referenceRows { citations { locator source { id } } } } }`,
    );
    expect(errors).toEqual([]);
    expect(data.term.referenceRows[3].citations).toEqual([{ locator: "p. 1", source: null }]);
  });

  it("[A40] read their sources with one call of the store", async () => {
    const { ask } = await open();
    const { calls } = await ask(
      `{ term(id: "tool.circular-saw") { referenceRows { citations { source { id } } } } }`,
    );
    expect(calls).toEqual(["terms", "sources"]);
  });

  it("[A40] are counted as often as the longest table of the seed has them for one term, or nearly", async () => {
    const rows = await readTables("seed-data");
    if (isProblem(rows)) throw new Error(rows.message);
    const most = Math.max(...[...Map.groupBy(rows, ({ term }) => term).values()].map((of) => of.length));
    expect(most).toBeGreaterThan(40);
    const query = `{ term(id: "tool.circular-saw") { referenceRows { region { id } } } }`;
    const within = await openApi([sawGraph], undefined, most + 10, SAW_MEASURES);
    expect((await within.ask(query)).errors).toEqual([]);
    const tight = await openApi([sawGraph], undefined, most - 10, SAW_MEASURES);
    expect((await tight.ask(query)).errors).not.toEqual([]);
  });
});
