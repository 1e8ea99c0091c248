import { beforeAll, describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { type Dating, readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Source } from "#server/domain/source.ts";
import { type Graph, readGraph } from "./read-graph.ts";
import { readDocuments } from "./read-works.ts";

const documents = readDocuments().map((row) => ({ row, name: `${row["source"]}: ${row["states"]}` }));

let graph: Graph;

beforeAll(async () => {
  graph = await readGraph();
});

describe("A date of a patent, a book or an act, read outside the graph", () => {
  it("is there for many documents, most with their number", () => {
    expect(documents.length).toBeGreaterThanOrEqual(45);
    expect(documents.filter(({ row }) => row["number"] !== "").length).toBeGreaterThanOrEqual(15);
  });

  it.each(documents)(
    "is the date of the claim that cites it: $name",
    ({ row: { source = "", claim = "", states = "" } }) => {
      expect(graph.sources.has(source)).toBe(true);
      if (claim === "") return;
      const cited = graph.claims.get(claim);
      expect(cited?.status).toBe("accepted");
      expect(cited?.citations.flatMap((by) => ("source" in by ? [by.source] : []))).toContain(source);
      expect([when(cited), states]).toSatisfy(([a, b]: [string, string]) => canBeOne(a, b));
    },
  );

  it.each(documents)(
    "goes with number and grant as the source has them: $name",
    ({ row: { source = "", number = "", granted = "" } }) => {
      const csl = graph.sources.get(source)?.csl;
      if (number !== "") expect(String(csl?.number).replaceAll(",", "")).toBe(number);
      if (granted !== "")
        expect([issued(csl), granted]).toSatisfy(([a, b]: [string, string]) => canBeOne(a, b));
    },
  );

  it.each([
    ["1777-04-11", "1777-04-12"],
    ["1777-04", "1777-05-02"],
    ["1838/1840", "1841"],
    ["1801", "1802"],
  ])("is another date when the two cannot be one: %s and %s", (a, b) => {
    expect(canBeOne(a, b)).toBe(false);
  });
});

const when = (claim: Claim | undefined) => (claim && "when" in claim ? String(claim.when) : "");

/** `1777-04-11`, `1777-04` or `1777`, as far as the source says. */
const issued = (csl: Source["csl"] | undefined) =>
  (csl?.issued?.["date-parts"]?.[0] ?? []).map((part) => String(part).padStart(2, "0")).join("-");

/** Dates agree where one is the other told less exactly, and spans where they share a year. */
function canBeOne(a: string, b: string): boolean {
  if (a === "" || b === "") return false;
  if (!`${a}${b}`.includes("/")) return a.startsWith(b) || b.startsWith(a);
  const [one, other] = [hull(a), hull(b)];
  return one.begin[0] <= other.end[1] && other.begin[0] <= one.end[1];
}

function hull(text: string): Dating {
  const dating = readDating(text, "event");
  if (isProblem(dating)) throw new Error(dating.message);
  return dating;
}
