import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readPiece } from "#server/formats/read-piece.ts";
import { readReport } from "#server/formats/read-report.ts";
import { readWeighing } from "#server/formats/read-weighing.ts";
import { runNode } from "#tests/support/run-node.ts";

const example = (name: string) => fileURLToPath(new URL(`../../../docs/formats/${name}`, import.meta.url));
const json = (name: string): unknown => JSON.parse(readFileSync(example(name), "utf8"));

describe("the examples of the formats", () => {
  it("[A23] [A24] are of their forms", () => {
    expect(readPiece(json("piece.example.json"))).toMatchObject({ invented: true });
    expect(readReport(json("report.example.json"))).toHaveProperty("findings");
    expect(readWeighing(json("weighing.example.json"))).toHaveProperty("dates");
  });

  it("[A25] belong together: the piece, examined on the dump, gives the report, byte for byte", async () => {
    const [piece, graph] = [example("piece.example.json"), example("dump.example.jsonl")];
    const { exit, out, err } = await runNode(["server/examine-piece.ts", piece, "--graph", graph]).ended;
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    // Else: npm run --silent examine -- <the piece> --graph <the dump> > docs/formats/report.example.json
    expect(out).toBe(readFileSync(example("report.example.json"), "utf8"));
  });

  it("[A25] belong together: the piece, weighed on the dump, gives the weighing, byte for byte", async () => {
    const [piece, graph] = [example("piece.example.json"), example("dump.example.jsonl")];
    const { exit, out, err } = await runNode(["server/examine-piece.ts", piece, "--weigh", "--graph", graph])
      .ended;
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    // Else: npm run --silent examine -- <the piece> --weigh --graph <the dump> > docs/formats/weighing.example.json
    expect(out).toBe(readFileSync(example("weighing.example.json"), "utf8"));
  });

  it("[A24] a report with a member too many, or too few, is not of its form", () => {
    const report = json("report.example.json") as object;
    expect(readReport({ ...report, score: 3 })).toMatchObject([{ code: "WRONG_FORMAT" }]);
    expect(readReport({ ...report, findings: undefined })).toMatchObject([{ code: "WRONG_FORMAT" }]);
    expect(readReport({ ...report, version: 2 })).toMatchObject([{ code: "OTHER_VERSION" }]);
  });

  it("[A24] a weighing with a member too many, or too few, or a probability above 1, is not of its form", () => {
    const weighing = json("weighing.example.json") as { readonly dates: object };
    const wrong = (changed: object) =>
      expect(readWeighing({ ...weighing, ...changed })).toMatchObject([{ code: "WRONG_FORMAT" }]);
    wrong({ score: 3 });
    wrong({ odds: undefined });
    wrong({ dates: { ...weighing.dates, claimed: { prior: 1.2, posterior: 0, log10: null } } });
  });
});
