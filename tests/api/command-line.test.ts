import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { dumpLine } from "#server/chain/seal-dump.ts";
import type { Piece } from "#server/domain/examination.ts";
import { readReport } from "#server/formats/read-report.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { openHttp, post } from "#tests/support/open-http.ts";
import { runNode } from "#tests/support/run-node.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-cli-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = (name: string, content: unknown): string => {
  const path = join(folder, name);
  writeFileSync(
    path,
    typeof content === "string" || Buffer.isBuffer(content) ? content : JSON.stringify(content),
  );
  return path;
};
/** Never made by what does not need a data folder. */
const untouched = join(folder, "no-data");
const examine = (args: readonly string[], data = untouched) =>
  runNode(["server/examine-piece.ts", ...args], { SCRIBELINE_DATA: data }).ended;

const sawn: Piece = aPiece({
  ...{ date: "1760/1775", region: "region.england", form: "form.chest" },
  parts: [{ id: "bottom", kind: "part.drawer-bottom" }],
  observations: [{ id: "o1", part: "bottom", feature: "feature.round-saw-marks" }],
});

describe("the command line", () => {
  let dump: readonly string[] = [];
  let graph = "";
  let piece = "";
  beforeAll(async () => {
    const store = openMemoryStore();
    const saw = sawGraph.filter((edit) => edit.after?.id === "claim.saw");
    for (const change of [sawGraph.filter((edit) => !saw.includes(edit)), saw])
      await store.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
    const lines: string[] = [];
    for await (const record of store.dump()) lines.push(dumpLine(record));
    dump = lines;
    graph = file("graph.jsonl", lines.join(""));
    piece = file("piece.json", sawn);
  });

  it("[A25] prints the report as one line of JSON, of the published form, and says nothing else", async () => {
    const { exit, out, err } = await examine([piece, "--graph", graph]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out.endsWith("\n")).toBe(true);
    const report: unknown = JSON.parse(out);
    expect(readReport(report)).toMatchObject({ format: "scribeline/report", revision: 2 });
    expect(report).toMatchObject({ ruleOuts: [{ against: "attribution" }] });
  });

  it("[A7] prints, byte for byte, the report that the API gives", async () => {
    const { out } = await examine([piece, "--graph", graph]);
    const server = await openHttp([
      sawGraph.filter((edit) => edit.after?.id !== "claim.saw"),
      sawGraph.filter((edit) => edit.after?.id === "claim.saw"),
    ]);
    const capitals = sawn.observations.map((o) => ({ ...o, seen: "PRESENT", sureness: "SURE" }));
    const { text } = await post(server.url, {
      query: "query ($piece: PieceInput!) { examine(piece: $piece) { ... on Examined { report } } }",
      variables: { piece: { ...sawn, observations: capitals } },
    });
    await server.stop();
    expect(text).toContain(out.trimEnd());
    expect(text).toBe(`{"data":{"examine":{"report":${out.trimEnd()}}}}\n`);
  });

  it("[A25] prints words where words are asked for", async () => {
    const { exit, out } = await examine([piece, "--graph", graph, "--words"]);
    expect(exit).toBe(0);
    expect(out).toContain("1790");
    expect(out).toContain("[claim.saw]");
    expect(out).not.toContain("{");
  });

  it("[A27] examines on an earlier state of the graph, and touches no data folder", async () => {
    const { exit, out } = await examine([piece, "--graph", graph, "--revision", "1"]);
    expect(exit).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ revision: 1, ruleOuts: [] });
    expect(existsSync(untouched)).toBe(false);
  });

  it("says how it is used", async () => {
    const { exit, out } = await examine(["--help"]);
    expect(exit).toBe(0);
    expect(out).toContain("--graph dump.jsonl");
  });

  describe("[A26] refuses with exit status 2, nothing on standard output,", () => {
    const named = (name: string, content: unknown) => () => [file(name, content), "--graph", graph];
    const half = () => dump.slice(0, 2).join("");
    const onGraph = (name: string, content: () => string) => () => [piece, "--graph", file(name, content())];

    it.each([
      ["no file at all", () => [], /^WRONG_FORMAT: One file of a piece is wanted\. Use: /],
      ["two files", () => [piece, piece], /^WRONG_FORMAT: One file of a piece is wanted\./],
      ["an unknown option", () => [piece, "--grpah", graph], /^WRONG_FORMAT: .*--grpah/],
      [
        "no number of a revision",
        () => [piece, "--revision", "last"],
        /^WRONG_FORMAT: --revision has to be /,
      ],
      [
        "a file that is not there",
        () => [join(folder, "no.json")],
        /^UNREADABLE_FILE: .*no\.json cannot be read/,
      ],
      ["a folder", () => [folder], /^UNREADABLE_FILE: /],
      [
        "what is not JSON",
        named("torn.json", '{"title": "x",'),
        /^WRONG_FORMAT: .*torn\.json is not JSON \(/,
      ],
      ["an empty file", named("empty.json", ""), /^WRONG_FORMAT: .*empty\.json is not JSON \(/],
      [
        "what is not text",
        named("bytes.json", Buffer.from([0xff, 0xfe, 0])),
        /^WRONG_FORMAT: .*not UTF-8 text/,
      ],
      [
        "10 MB of text",
        named("large.json", { ...sawn, note: "x".repeat(10_000_000) }),
        /^TOO_LARGE: .*large\.json has 10\d{6} bytes, and at most 1000000 are read/,
      ],
      [
        "a piece that breaks the format",
        named("odd.json", { ...sawn, observations: [{ ...sawn.observations[0], seen: "yes" }] }),
        /^WRONG_FORMAT at \/observations\/0\/seen: "seen" has to be one of present, absent, unseen, and is "yes"\.$/m,
      ],
      [
        "a piece of another version",
        named("v2.json", { ...sawn, version: 2 }),
        /^OTHER_VERSION at \/version: /,
      ],
      [
        "a date that cannot be read",
        named("date.json", { ...sawn, attribution: { date: "175" } }),
        /^UNREADABLE_DATING at \/attribution\/date: .*Write 175X/,
      ],
      [
        "a term that the graph does not know",
        named("term.json", { ...sawn, attribution: { date: "1760", form: "form.chst" } }),
        /^UNKNOWN_TERM at \/attribution\/form: .*form\.chest/,
      ],
      [
        "a part of itself",
        named("itself.json", { ...sawn, parts: [{ id: "bottom", label: "B", within: "bottom" }] }),
        /^PART_OF_ITSELF at \/parts\/0\/within: /,
      ],
      [
        "an observation on a missing part",
        named("missing.json", { ...sawn, parts: [] }),
        /^UNKNOWN_PART at \/observations\/0\/part: /,
      ],
      [
        "a revision that there is not",
        () => [piece, "--graph", graph, "--revision", "3"],
        /^UNKNOWN_REVISION at \/revision: .*0 to 2/,
      ],
      ["a dump that is not there", () => [piece, "--graph", join(folder, "no.jsonl")], /^UNREADABLE_FILE: /],
      ["a truncated dump", onGraph("half.jsonl", half), /^DAMAGED_DUMP.*: /],
      [
        "a dump cut within a line",
        onGraph("cut.jsonl", () => dump.join("").slice(0, -20)),
        /^DAMAGED_DUMP.*: /,
      ],
      [
        "a dump with a changed claim",
        onGraph("changed.jsonl", () => dump.join("").replace('"1790"', '"1690"')),
        /^DAMAGED_DUMP.*: /,
      ],
      [
        "a dump of another version",
        onGraph("other.jsonl", () => dump.join("").replace('"version":2', '"version":9')),
        /^OTHER_VERSION.*: /,
      ],
      ["a dump that is no dump", onGraph("none.jsonl", () => '{"kind":"piece"}\n'), /^WRONG_FORMAT.*: /],
    ] as const)("%s", async (_, args, says) => {
      const { exit, out, err } = await examine(args());
      expect({ exit, out }).toEqual({ exit: 2, out: "" });
      expect(err).toMatch(says);
      expect(err).not.toMatch(/\n\s+at /);
      expect(existsSync(untouched)).toBe(false);
    });

    it("a damaged store, which stays as it is", async () => {
      const data = join(folder, "damaged");
      const seeded = await examine([piece], data);
      expect(seeded.exit).toBe(2);
      const [store = ""] = readdirSync(data).filter((name) => name.endsWith(".sqlite"));
      writeFileSync(join(data, store), "x".repeat(8192));
      const { exit, out, err } = await examine([piece], data);
      expect({ exit, out }).toEqual({ exit: 2, out: "" });
      expect(err).toMatch(/^STORE_CORRUPT: /);
    });
  });

  it("[A25] examines on the graph of the data folder, which it seeds if it is empty, also while a server has it", async () => {
    const data = join(folder, "data");
    const example = "docs/formats/piece.example.json";
    const first = await examine([example], data);
    expect({ exit: first.exit, err: first.err }).toEqual({ exit: 0, err: "" });
    const server = runNode(["server/start.ts", "--no-build"], {
      SCRIBELINE_DATA: data,
      SCRIBELINE_PORT: "0",
    });
    await expect.poll(server.said).toContain("http://127.0.0.1:");
    const second = await examine([example], data);
    server.child.kill("SIGTERM");
    expect((await server.ended).exit).toBe(0);
    expect(second).toEqual(first);
  });
});
