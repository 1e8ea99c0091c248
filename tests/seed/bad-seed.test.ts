import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isProblem, type Problem, type ProblemCode } from "#server/domain/problem.ts";
import { readSeed } from "#server/seed/read-seed.ts";

type Thing = Readonly<Record<string, unknown>>;
type Folder = "terms" | "claims" | "sources" | "tables";

/** A seed that is spoilt in one line, and what the refusal has to say of it. */
interface Spoilt {
  readonly folder: Folder;
  /** The thing whose line is spoilt. */
  readonly id: string;
  readonly edit: (thing: Thing) => Thing;
  readonly code: ProblemCode;
  /** The field, as the message names it. */
  readonly field: string;
  /** The id in the message, where the edit changes it. */
  readonly named?: string;
  readonly wrong: RegExp;
  readonly remedy: RegExp;
}

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "scribeline-bad-seed-"));
  cpSync("seed-data", folder, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** File and line of a thing in the copy of the seed. */
function find(within: Folder, id: string): { readonly file: string; readonly line: number } {
  for (const name of readdirSync(join(folder, within)).filter((each) => each.endsWith(".jsonl"))) {
    const file = join(folder, within, name);
    const index = readFileSync(file, "utf8")
      .split("\n")
      .findIndex((text) => text !== "" && (JSON.parse(text) as Thing)["id"] === id);
    if (index >= 0) return { file, line: index + 1 };
  }
  throw new Error(`The seed has no ${id}`);
}

/** What reading the seed says with one line written anew; the line is put back. */
async function readWith(file: string, line: number, edit: (text: string) => string): Promise<unknown> {
  const before = readFileSync(file, "utf8");
  const lines = before.split("\n");
  lines[line - 1] = edit(lines[line - 1] ?? "");
  writeFileSync(file, lines.join("\n"));
  try {
    return await readSeed(folder);
  } finally {
    writeFileSync(file, before);
  }
}

function refusal(read: unknown): Problem {
  if (!isProblem(read)) throw new Error("The seed was taken as it is");
  return read;
}

const published = (source: string) => [{ basis: "published", source, locator: "opening" }];

const SPOILT: Readonly<Record<string, Spoilt>> = {
  "an uncited claim": {
    ...{ folder: "claims", id: "claim.A19", edit: (claim) => ({ ...claim, citations: [] }) },
    ...{ code: "UNCITED_CLAIM", field: "citations", wrong: /cites nothing/, remedy: /add a citation, or/ },
  },
  "an unknown region": {
    ...{ folder: "claims", id: "claim.A13", code: "UNKNOWN_TERM", field: "scope.region" },
    edit: (claim) => ({ ...claim, scope: { region: "region.atlantis" } }),
    ...{ wrong: /no term region\.atlantis, named as the region of the scope/, remedy: /add it or name/ },
  },
  "a form for a region": {
    ...{ folder: "claims", id: "claim.A13", code: "WRONG_KIND_OF_TERM", field: "scope.region" },
    edit: (claim) => ({ ...claim, scope: { region: "form.chest" } }),
    ...{ wrong: /form\.chest is a form and cannot be the region/, remedy: /name another term/ },
  },
  "a dangling reference to a term": {
    ...{ folder: "claims", id: "claim.M11", code: "UNKNOWN_TERM", field: "ways[0][0]" },
    edit: (claim) => ({ ...claim, ways: [["tool.ribbon-saw"]] }),
    ...{ wrong: /no term tool\.ribbon-saw/, remedy: /add it or name another/ },
  },
  "a dangling look-alike": {
    ...{ folder: "terms", id: "feature.wire-nail", code: "UNKNOWN_TERM" },
    edit: (term) => ({
      ...term,
      looking: {
        ...(term["looking"] as Thing),
        mistakenFor: [{ what: "a pin", term: "feature.pin", apart: "It is thinner." }],
      },
    }),
    field: "looking.mistakenFor[0].term",
    ...{ wrong: /no term feature\.pin/, remedy: /add it or name another/ },
  },
  "a dangling reference to a claim": {
    ...{ folder: "claims", id: "claim.B48-gb", code: "UNKNOWN_CLAIM", field: "of" },
    edit: (claim) => ({ ...claim, of: "claim.nowhere" }),
    ...{ wrong: /no claim claim\.nowhere/, remedy: /add it or name another/ },
  },
  "a dangling reference to a source": {
    ...{ folder: "claims", id: "claim.A19", code: "UNKNOWN_SOURCE", field: "citations[0].source" },
    edit: (claim) => ({ ...claim, citations: published("source.nowhere") }),
    ...{ wrong: /no source source\.nowhere/, remedy: /add it or name another/ },
  },
  "a table that measures nothing known": {
    ...{ folder: "tables", id: "shrinkage.white-ash-radial", code: "UNKNOWN_TERM", field: "term" },
    edit: (row) => ({ ...row, term: "material.nowhere" }),
    ...{ wrong: /names material\.nowhere, which is not there/, remedy: /add the term or correct its id/ },
  },
  "a published citation without its place": {
    ...{ folder: "claims", id: "claim.A19", code: "MISSING_LOCATOR", field: "citations[0].locator" },
    edit: (claim) => ({ ...claim, citations: [{ basis: "published", source: "source.mercer-1923" }] }),
    ...{ wrong: /needs the place in its source/, remedy: /add a page, section, plate or number/ },
  },
  "common practice that names a source": {
    ...{ folder: "claims", id: "claim.A13", code: "WRONG_FORMAT", field: "citations[0].source" },
    edit: (claim) => ({
      ...claim,
      citations: [{ basis: "common practice", source: "source.mercer-1923" }],
    }),
    ...{
      wrong: /basis “common practice” has no source/,
      remedy: /take it out, or call the citation published/,
    },
  },
  "a citation that raises its basis": {
    ...{ folder: "claims", id: "claim.A13", code: "WRONG_FORMAT", field: "citations[0].basis" },
    edit: (claim) => ({ ...claim, citations: published("source.mercer-1923") }),
    wrong: /row A13 of the fact register is common practice, and the citation raises it to published/,
    remedy: /write “common practice”, or raise the row in register-rows\.txt too once the text has been read/,
  },
  "looking notes that raise their basis": {
    ...{ folder: "terms", id: "feature.wire-nail", code: "WRONG_FORMAT", field: "looking.basis" },
    edit: (term) => ({ ...term, looking: { ...(term["looking"] as Thing), basis: "published" } }),
    ...{ wrong: /basis of looking notes/, remedy: /must be common practice or from memory/ },
  },
  "a list of dates for a span of use": {
    ...{ folder: "claims", id: "claim.F56", code: "UNREADABLE_DATING", field: "when" },
    edit: (claim) => ({ ...claim, when: "[1670,1820]" }),
    wrong: /"\[1670,1820\]" cannot be read: a list of dates names single events, and a span of use is wanted/,
    remedy: /Write /,
  },
  "a date in words": {
    ...{ folder: "claims", id: "claim.A19", code: "UNREADABLE_DATING", field: "when" },
    edit: (claim) => ({ ...claim, when: "c.1808" }),
    ...{ wrong: /"c\.1808" cannot be read/, remedy: /Write 1808~ instead/ },
  },
  "a label in use twice in one kind": {
    ...{ folder: "terms", id: "tool.band-saw", code: "WRONG_FORMAT", field: "otherLabels[0]" },
    edit: (term) => ({ ...term, otherLabels: ["Pit saw"] }),
    wrong: /The tool tool\.pit-saw \(.*sawing\.jsonl, line \d+\) is called “Pit saw” already/,
    remedy: /give one of the two another label, or make one term of them/,
  },
  "a source nobody cites": {
    ...{ folder: "claims", id: "claim.D45", code: "WRONG_FORMAT", field: "id" },
    // Its only citation of this source is taken back; the refusal is about the source.
    edit: (claim) => ({ ...claim, citations: [{ basis: "from memory" }] }),
    named: "source.gb-8240-1839",
    ...{
      wrong: /No claim and no table cites this source/,
      remedy: /cite it where it was read, or take it out/,
    },
  },
  "a broader-term cycle": {
    ...{ folder: "terms", id: "tool.saw", code: "CYCLE_OF_BROADER_TERMS", field: "broader" },
    edit: (term) => ({ ...term, broader: "tool.band-saw" }),
    ...{ wrong: /tool\.saw is broader than itself/, remedy: /give one of them another broader term or none/ },
  },
  "an exception of itself": {
    ...{ folder: "claims", id: "claim.B48-gb", code: "CYCLE_OF_EXCEPTIONS", field: "of" },
    edit: (claim) => ({ ...claim, of: "claim.B48-gb" }),
    ...{ wrong: /is an exception of itself/, remedy: /let it name the claim it makes void/ },
  },
  "an id that stands twice": {
    ...{ folder: "terms", id: "tool.band-saw", code: "DUPLICATE_ID", field: "id", named: "tool.saw" },
    edit: (term) => ({ ...term, id: "tool.saw" }),
    wrong: /The id stands in .*sawing\.jsonl, line \d+, too/,
    remedy: /make one thing of the two, or give one another id/,
  },
  "a field that the relation has not": {
    ...{ folder: "claims", id: "claim.A13", code: "WRONG_FORMAT", field: "certainty" },
    edit: (claim) => ({ ...claim, certainty: 1 }),
    ...{ wrong: /There is no field certainty/, remedy: /use id, relation/ },
  },
  "looking notes on a tool": {
    ...{ folder: "terms", id: "tool.band-saw", code: "WRONG_FORMAT", field: "looking" },
    edit: (term) => ({
      ...term,
      looking: { how: "Look.", move: "nothing", basis: "common practice" },
    }),
    ...{ wrong: /Looking notes must be/, remedy: /left out but on a feature/ },
  },
};

const literal = (text: string) => text.replace(/[.[\]/\\()+*?^$|{}]/g, "\\$&");

describe("[S20] a seed is refused by file, line, id, field and remedy", () => {
  it("but taken where nothing is wrong", async () => {
    expect(isProblem(await readSeed(folder))).toBe(false);
  });

  it.each(Object.entries(SPOILT))("with %s", async (_, spoilt) => {
    const place = find(spoilt.folder, spoilt.id);
    const said = refusal(
      await readWith(place.file, place.line, (text) =>
        JSON.stringify(spoilt.edit(JSON.parse(text) as Thing)),
      ),
    );
    const named = spoilt.named ?? spoilt.id;
    const blamed = named.startsWith("source.") ? find("sources", named) : place;
    expect(said.code).toBe(spoilt.code);
    expect(said.message).toMatch(
      new RegExp(
        `^${literal(blamed.file)}, line ${blamed.line}, ${literal(named)}, field ${literal(spoilt.field)}: `,
      ),
    );
    expect(said.message).toMatch(spoilt.wrong);
    expect(said.message).toMatch(spoilt.remedy);
  });

  it.each([
    ["a line that is no JSON", "{"],
    ["a line without an id", "{}"],
    ["an id with a blank", '{"id":"tool.pit saw"}'],
    ["a line that is null", "null"],
  ])("with %s, which has no id to name", async (_, text) => {
    const { file, line } = find("terms", "tool.pit-saw");
    const said = refusal(await readWith(file, line, () => text));
    expect(said).toMatchObject({ code: "WRONG_FORMAT", path: ["id"] });
    expect(said.message).toBe(
      `${file}, line ${line}, field id: the line is not a JSON object with an id of letters, digits, dots and hyphens; correct it there.`,
    );
  });

  it("with a row of the register that has no basis", async () => {
    const file = join(folder, "register-rows.txt");
    const said = refusal(await readWith(file, 13, () => "A13"));
    expect(said.message).toMatch(
      /register-rows\.txt, line 13: “A13” is not a row and its basis; write it as/,
    );
  });

  it("with a count of what else is wrong", async () => {
    const { file, line } = find("terms", "tool.pit-saw");
    const said = refusal(await readWith(file, line, () => ""));
    expect(said.message).toMatch(
      /named as .*; add it or name another\. \d+ more things are wrong with the seed\.$/,
    );
  });
});
