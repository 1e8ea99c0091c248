import { beforeEach, describe, expect, it } from "vitest";
import type { Change } from "#server/domain/change.ts";
import { adding, aTerm } from "#tests/support/build-change.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const LOOK = `query ($kind: ProposalKind!, $form: FormFields!) { lookOver(kind: $kind, form: $form) {
  change
  edits { of kind does before after }
  problems { code message path instead }
  alike { of kind by says }
} }`;
const READ = `query ($text: String!) { readBatch(text: $text) {
  change problems { code message path }
  rows { row says problems { code message path instead } alike { of by says } }
} }`;
const MAKE = `mutation ($input: ProposalInput!, $open: Boolean!) { made: makeProposal(input: $input, open: $open) {
  ... on ProposalChanged { proposal { id version state form change } }
  ... on Refused { problems { code path } }
} }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $changes: ProposalChanges!) {
  made: changeProposal(id: $id, expectedVersion: $on, changes: $changes) {
    ... on ProposalChanged { proposal { id version form } }
    ... on Refused { problems { code path } }
  }
}`;

const DECIDE = `mutation ($id: ID!, $on: Int!) {
  made: decideOnProposal(id: $id, expectedVersion: $on, verdict: ACCEPT, reason: "") {
    ... on ProposalChanged { proposal { state } }
    ... on Refused { problems { code message path } }
  }
}`;

let api: Awaited<ReturnType<typeof openApi>>;
beforeEach(async () => {
  api = await openApi([
    sawGraph,
    adding(aTerm("tool.pit-saw"), aTerm("tool.pit-saw-again", { label: "Pit-Saw" })),
  ]);
});
const answered = async (query: string, variables: Record<string, unknown>) => {
  const { data, errors } = await api.ask(query, variables);
  expect(errors).toEqual([]);
  return data;
};
const look = async (kind: string, form: unknown) => (await answered(LOOK, { kind, form })).lookOver;
const read = async (text: string) => (await answered(READ, { text })).readBatch;
const wouldBeTaken = async (change: Change, kind: string) => {
  const input = { kind, title: "As looked over", why: "It was looked over.", change };
  const { made } = await answered(MAKE, { input, open: true });
  expect(made.problems).toBeUndefined();
  return made.proposal;
};

describe("a form that is read back", () => {
  const claim = {
    ...{ relation: "requires", subject: "feature.rough-ground", ways: "tool.pit-saw", basis: "from memory" },
  };

  it("[J40] says a claim as a sentence, and gives the change that is proposed", async () => {
    const looked = await look("CLAIM", claim);
    expect(looked.problems).toEqual([]);
    expect(looked.edits).toMatchObject([
      { does: "ADDED", after: expect.stringMatching(/can only come of pit saw\.$/) },
    ]);
    await wouldBeTaken(looked.change, "CLAIM");
  });

  it("[J40] brings a new source with its claim, in one change", async () => {
    const published = {
      ...claim,
      basis: "published",
      locator: "p. 3",
      title: "On pits",
      author: "Example, Ann",
      year: "1901",
    };
    const looked = await look("CLAIM", published);
    expect(looked.edits.map(({ kind }: { kind: string }) => kind)).toEqual(["source", "claim"]);
    expect(looked.change[1].after.citations).toEqual([
      { basis: "published", source: "source.example-1901", locator: "p. 3" },
    ]);
    await wouldBeTaken(looked.change, "CLAIM");
    const { year: _, ...undated } = published;
    const lacking = await look("CLAIM", undated);
    expect(lacking).toMatchObject({ change: null, problems: [{ path: ["year"] }] });
  });

  it("[J42] names what may be there already, also while something is lacking", async () => {
    const looked = await look("CLAIM", { relation: "introduced", subject: "tool.circular-saw" });
    expect(looked.change).toBeNull();
    expect(looked.alike).toEqual([
      { of: "claim.saw", kind: "claim", by: "SAME_CLAIM", says: expect.stringMatching(/introduced/) },
    ]);
    expect((await look("TERM", { kind: "tool", label: "Circular Saw" })).alike).toMatchObject([
      { of: "tool.circular-saw", by: "SAME_LABEL" },
    ]);
    const book = { title: "Saws and their marks", author: "Example, Ann", year: "1999" };
    expect((await look("SOURCE", book)).alike).toMatchObject([{ of: "source.saw-book", by: "SAME_SOURCE" }]);
  });

  it("[J43] corrects and retires what stands, and makes exceptions", async () => {
    const corrected = await look("CORRECTION", {
      about: "claim.saw",
      ...{ relation: "introduced", subject: "tool.circular-saw", region: "region.england", when: "1792" },
      ...{ basis: "published", source: "source.saw-book", locator: "p. 12", strength: "firm" },
    });
    expect(corrected.edits).toMatchObject([{ of: "claim.saw", does: "CHANGED" }]);
    await wouldBeTaken(corrected.change, "CORRECTION");
    expect((await look("CORRECTION", { about: "claim.nowhere" })).problems).toMatchObject([
      { path: ["about"] },
    ]);

    const retired = await look("RETIREMENT", { about: "claim.saw", reason: "Misread." });
    expect(retired.change).toMatchObject([{ after: { status: "rejected", note: "Misread." } }]);
    await wouldBeTaken(retired.change, "RETIREMENT");
    expect((await look("RETIREMENT", { about: "tool.circular-saw", reason: "x" })).problems).toMatchObject([
      { code: "UNKNOWN_TERM", message: expect.stringMatching(/names it/) },
    ]);

    const exception = await look("EXCEPTION", {
      of: "claim.marks",
      condition: "feature.gesso",
      basis: "from memory",
    });
    expect(exception.change).toMatchObject([{ after: { relation: "void when", of: "claim.marks" } }]);
    await wouldBeTaken(exception.change, "EXCEPTION");
  });

  it("[J47] corrects every citation of a claim, in its order, with as many new sources as are described", async () => {
    const claim = {
      ...{
        about: "claim.saw",
        relation: "introduced",
        subject: "tool.circular-saw",
        region: "region.england",
      },
      ...{ when: "1792", strength: "firm", basis: "published", locator: "p. 3" },
      ...{ title: "On pits", author: "Example, Ann", year: "1901" },
      ...{ "basis.2": "published", "source.2": "source.saw-book", "locator.2": "p. 12" },
      ...{ "basis.3": "published", "locator.3": "p. 4", "title.3": "On mills", "author.3": "Example, Bo" },
    };
    const undated = await look("CORRECTION", claim);
    expect(undated).toMatchObject({ change: null, problems: [{ path: ["year.3"] }] });
    const looked = await look("CORRECTION", { ...claim, "year.3": "1905" });
    expect(looked.problems).toEqual([]);
    expect(looked.change.at(-1).after.citations).toEqual([
      { basis: "published", source: "source.example-1901", locator: "p. 3" },
      { basis: "published", source: "source.saw-book", locator: "p. 12" },
      { basis: "published", source: "source.example-1905", locator: "p. 4" },
    ]);
    expect(looked.edits.map(({ kind }: { kind: string }) => kind)).toEqual(["source", "source", "claim"]);
    await wouldBeTaken(looked.change, "CORRECTION");
    const same = await look("CORRECTION", {
      ...{ ...claim, "title.3": "On pits", "author.3": "Example, Ann", "year.3": "1901" },
    });
    expect(same.change).toHaveLength(2);
  });

  it("[J44] merges two terms as one change that the graph takes", async () => {
    const looked = await look("MERGE", { about: "tool.circular-saw", into: "tool.pit-saw" });
    expect(looked.problems).toEqual([]);
    expect(looked.edits.length).toBeGreaterThan(4);
    await wouldBeTaken(looked.change, "MERGE");
    expect((await look("MERGE", { about: "tool.circular-saw" })).problems).toMatchObject([
      { path: ["into"] },
    ]);
  });

  it("[J48] a term that was merged is not named anew, and says what it is called now", async () => {
    const waiting = await look("CLAIM", { ...claim, ways: "tool.pit-saw-again" });
    const proposal = await wouldBeTaken(waiting.change, "CLAIM");
    const merged = await look("MERGE", { about: "tool.pit-saw-again", into: "tool.pit-saw" });
    const merge = await wouldBeTaken(merged.change, "MERGE");
    const accepted = await answered(DECIDE, { id: merge.id, on: 1 });
    expect(accepted.made.problems).toBeUndefined();

    const name = "{ id label mergedInto { id label } }";
    const { gone, kept } = await answered(
      `{ gone: term(id: "tool.pit-saw-again") ${name} kept: term(id: "tool.pit-saw") ${name} }`,
      {},
    );
    expect(gone).toMatchObject({ label: "Pit-Saw", mergedInto: { id: "tool.pit-saw" } });
    expect(kept.mergedInto).toBeNull();
    const refused = {
      code: "UNKNOWN_TERM",
      message: expect.stringMatching(/^Pit-Saw is one with pit saw by now/),
    };
    for (const [kind, form] of [
      ["CLAIM", { ...claim, ways: "tool.pit-saw-again" }],
      ["TERM", { kind: "tool", label: "long saw", broader: "tool.pit-saw-again" }],
    ] as const)
      expect(await look(kind, form)).toMatchObject({ change: null, problems: [refused] });
    expect((await answered(DECIDE, { id: proposal.id, on: 1 })).made).toMatchObject({ problems: [refused] });
    const again = await look("MERGE", { about: "tool.circular-saw", into: "tool.pit-saw-again" });
    expect(again).toMatchObject({ change: null, problems: [{ path: ["into"] }] });

    const apart = await look("CORRECTION", { about: "tool.pit-saw-again", kind: "tool", label: "Pit-Saw" });
    expect(apart.change).toMatchObject([{ before: { merged: true }, after: { label: "Pit-Saw" } }]);
    expect(apart.change[0].after.merged).toBeUndefined();
    const noted = await look("CORRECTION", {
      ...{
        about: "tool.pit-saw-again",
        kind: "tool",
        label: "Pit-Saw",
        broader: "tool.pit-saw",
        note: "Old.",
      },
    });
    expect(noted.change).toMatchObject([{ after: { merged: true, note: "Old." } }]);
  });

  it("[J40] refuses a form that is none, and takes script for text", async () => {
    expect((await look("CLAIM", ["x"])).problems).toMatchObject([{ code: "WRONG_FORMAT", path: ["form"] }]);
    const looked = await look("CLAIM", { ...claim, note: "<script>alert(1)</script>" });
    expect(looked.change[0].after.note).toBe("<script>alert(1)</script>");
  });
});

describe("nonsense in a form", () => {
  const NONSENSE = [
    ...[
      "constructor",
      "__proto__",
      "../../etc",
      "' OR 1=1 --",
      "<img src=x onerror=alert(1)>",
      "\u202e\u0000",
    ],
    ...["[..]", "{1700..9999}", "XXXX/..", "1750-13-45", "20000~", "%~?", "| + |", "x ".repeat(2400)],
  ];
  it.each(["CLAIM", "TERM", "SOURCE", "CORRECTION", "EXCEPTION", "RETIREMENT", "MERGE"])(
    "[J40] is refused in words wherever it stands, and never fails: %s",
    async (kind) => {
      const fields = [
        ...["relation", "subject", "when", "region", "ways", "regions", "states", "years", "basis", "source"],
        ...[
          "label",
          "kind",
          "broader",
          "parts",
          "title",
          "year",
          "author",
          "about",
          "into",
          "of",
          "condition",
        ],
      ];
      for (const text of NONSENSE) {
        for (const relation of ["introduced", "requires", "indicates"]) {
          const form = { ...Object.fromEntries(fields.map((name) => [name, text])), relation };
          const looked = await look(kind, Object.fromEntries(Object.entries(form).slice(0, 8)));
          const whole = await look(kind, kind === "CLAIM" ? form : { ...form, relation: text });
          expect(
            [looked, whole].every(({ change, problems }) => change === null || problems.length === 0),
          ).toBe(true);
        }
      }
      expect((await look(kind, { about: "constructor", into: "constructor", label: "x" })).change).toBeNull();
    },
  );
});

describe("a draft of a form", () => {
  it("[J46] is kept with what stands in it, and two tabs do not overwrite each other", async () => {
    const input = { kind: "CLAIM", title: "", why: "", change: [], form: { relation: "introduced" } };
    const { made } = await answered(MAKE, { input, open: false });
    expect(made.proposal).toMatchObject({ state: "DRAFT", version: 1, form: { relation: "introduced" } });
    const on = { id: made.proposal.id, on: 1 };
    const first = await answered(CHANGE, { ...on, changes: { form: { relation: "attested" } } });
    expect(first.made.proposal).toMatchObject({ version: 2, form: { relation: "attested" } });
    const second = await answered(CHANGE, { ...on, changes: { form: { relation: "current" } } });
    expect(second.made.problems).toMatchObject([{ code: "CHANGED_MEANWHILE" }]);
  });

  it("[J46] is refused where its form is none", async () => {
    const input = { kind: "CLAIM", title: "", why: "", change: [], form: { relation: 3 } };
    const { made } = await answered(MAKE, { input, open: false });
    expect(made.problems).toMatchObject([{ code: "WRONG_FORMAT", path: ["form", "relation"] }]);
  });
});

describe("a batch of claims", () => {
  const HEAD = "relation,subject,region,when,ways,basis,source,locator,title,author,year\n";

  it("[J45] is read row by row in words, with names for ids, and made one proposal", async () => {
    const text = `${HEAD}introduced,Circular Saw,england,1805,,from memory,,,,,
requires,rough ground,,,tool.pit-saw + circular saw,published,Saws and their marks,p. 7,,,
attested,tool.pit-saw,,1700,,published,,p. 1,On pits,"Example, Ann",1901
attested,tool.pit-saw,London,1701,,published,,p. 2,On pits,"Example, Ann",1901
`;
    const batch = await read(text);
    expect(batch.problems).toEqual([]);
    expect(batch.rows.flatMap((row: { problems: unknown[] }) => row.problems)).toEqual([]);
    expect(batch.rows.map(({ row, says }: { row: number; says: string[] }) => [row, says.length])).toEqual([
      ...[
        [2, 1],
        [3, 1],
        [4, 2],
        [5, 1],
      ],
    ]);
    expect(batch.rows[0].says[0]).toMatch(/^Circular saw: introduced in England, 1805\.$/);
    expect(batch.rows[2].alike).toEqual([]);
    expect(await wouldBeTaken(batch.change, "CLAIM")).toMatchObject({ state: "OPEN" });
  });

  it("[J45] names row and column of everything that is wrong, and then makes nothing", async () => {
    const text = `${HEAD}introduced,Pit saw,England,c. 1770,,from memory,,,,,
invented,circular saw,,,,from memory,,,,,
introduced,circular sow,Nowhere,1800,,published,source.saw-book,,,,
introduced,circular saw,,1800,,from memory,,,,,
`;
    const batch = await read(text);
    expect(batch.change).toBeNull();
    const told = batch.rows.flatMap(({ problems }: { problems: { path: string[] }[] }) =>
      problems.map(({ path }) => path.join(" ")),
    );
    expect(told).toEqual(["2 subject", "2 when", "3 relation", "4 subject", "4 region", "4 locator"]);
    expect(batch.rows[0].problems[0].message).toMatch(/the name of several terms.*tool\.pit-saw/);
    expect(batch.rows[3].problems).toEqual([]);
  });

  it("[J42] [J45] names rows that say what stands or what another row says", async () => {
    const text = `relation,subject,region,when,basis
introduced,circular saw,England,1790,from memory
introduced,circular saw,England,179X,from memory
`;
    const batch = await read(text);
    expect(batch.rows[0].alike).toMatchObject([{ of: "claim.saw", by: "SAME_CLAIM" }]);
    expect(batch.rows[1].alike).toHaveLength(2);
    expect(batch.change).toHaveLength(2);
  });

  it("[J45] is refused as a whole where its head is not known, or it has too many rows", async () => {
    expect(await read("relation,basis,colour\nx,y,z\n")).toMatchObject({
      change: null,
      rows: [],
      problems: [{ code: "WRONG_FORMAT", path: ["1", "colour"] }],
    });
    expect((await read("relation,basis,basis\nx,y,z\n")).problems).toMatchObject([{ code: "DUPLICATE_ID" }]);
    expect((await read("relation,basis\n")).problems).toMatchObject([{ code: "EMPTY_LIST" }]);
    expect((await read(`relation,basis\n${"attested,from memory\n".repeat(301)}`)).problems).toMatchObject([
      { code: "TOO_LARGE" },
    ]);
  });
});
