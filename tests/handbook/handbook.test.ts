import { beforeAll, describe, expect, it } from "vitest";
import { readDating } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { openGraphWithoutChains, openSeedGraph } from "./ask-graph.ts";
import { judgeLine } from "./judge-line.ts";
import { type Graph, readGraph } from "./read-graph.ts";
import { type Line, nameOf, READINGS, ROLES, readKnownDisagreements, readWorks } from "./read-works.ts";

/** Keys of the header of a work: what was read, and where and when. */
const HEADER = ["title", "author", "edition", "year", "read", "kind"];
const READ = /, read \d{4}-\d{2}-\d{2}$/;
/** Kinds of work, from the nearest to the makers to the furthest. */
const KINDS = ["handbook", "research", "museum text", "trade text", "tertiary"];
/** Kinds of term that can be asked about: seen on a piece, or said of it. */
const ASKED_KINDS = ["feature", "hardware", "material", "finish", "style", "form"];

const works = readWorks();
const lines = works.flatMap((work) => work.lines);
const known = new Map(
  readKnownDisagreements().map((row) => [nameOf(row as unknown as Line), row["reason"] ?? ""]),
);

let graph: Graph;
let store: Store;

beforeAll(async () => {
  graph = await readGraph();
  store = await openSeedGraph();
});

describe("The tables", () => {
  it("hold enough works and lines, most of which no claim cites, and enough of the handbooks and of research", () => {
    expect(works.length).toBeGreaterThanOrEqual(100);
    expect(lines.length).toBeGreaterThanOrEqual(250);
    expect(lines.filter(({ source }) => source === "").length).toBeGreaterThanOrEqual(120);
    expect(
      works.filter(({ about }) => KINDS.indexOf(about["kind"] ?? "") <= 2).length,
    ).toBeGreaterThanOrEqual(50);
    for (const role of ROLES)
      expect(lines.filter((line) => line.role === role).length, role).toBeGreaterThanOrEqual(30);
  });

  it.each(works)("say what $work is and where it was read", ({ about, lines: stated }) => {
    expect(Object.keys(about)).toEqual(HEADER);
    expect(about["read"]).toMatch(READ);
    expect(KINDS).toContain(about["kind"]);
    expect(stated.length).toBeGreaterThan(0);
  });

  it("speak of terms and sources of the graph, in dates that can be read", () => {
    const wrong = lines.filter(
      ({ source, section, feature, region, form, states, role, expected }) =>
        !ASKED_KINDS.includes(graph.terms.get(feature)?.kind ?? "") ||
        graph.terms.get(region)?.kind !== "region" ||
        (form !== "" && graph.terms.get(form)?.kind !== "form") ||
        (source !== "" && !graph.sources.has(source)) ||
        section === "" ||
        isProblem(readDating(states, role === "in use" ? "period" : "event")) ||
        !ROLES.includes(role) ||
        !READINGS.includes(expected),
    );
    expect(wrong.map(nameOf)).toEqual([]);
  });

  it("have no line twice", () => {
    expect(new Set(lines.map(nameOf)).size).toBe(lines.length);
  });
});

describe("The graph beside what works state", () => {
  it.each(works)("agrees with $work, or the disagreement is known", async ({ lines: stated }) => {
    const judged = await Promise.all(
      stated.map(async (line) => ({ line: nameOf(line), agrees: (await judgeLine(store, line)).agrees })),
    );
    expect(judged).toEqual(judged.map(({ line }) => ({ line, agrees: !known.has(line) })));
  });

  it.each(works)("reads $work as it is meant to", async ({ lines: stated }) => {
    const read = await Promise.all(
      stated.map(async (line) => {
        const { reading } = await judgeLine(store, line);
        // A graph that has come to know more than nothing is not a mistake.
        return {
          line: nameOf(line),
          reading: line.expected === "silent" && reading === "consistent" ? "silent" : reading,
        };
      }),
    );
    expect(read).toEqual(stated.map((line) => ({ line: nameOf(line), reading: line.expected })));
  });

  it("has a reason for every disagreement that is known, each about a line of a work", () => {
    const names = new Set(lines.map(nameOf));
    for (const [line, reason] of known) {
      expect(names, line).toContain(line);
      expect(reason.length, line).toBeGreaterThan(20);
    }
  });

  it("owes much of its agreement to chains of what needs what", async () => {
    const bare = await openGraphWithoutChains();
    const byChains = [];
    for (const line of lines) {
      const [whole, without] = [await judgeLine(store, line), await judgeLine(bare, line)];
      if (whole.agrees && !without.agrees) byChains.push(nameOf(line));
    }
    expect(byChains.length).toBeGreaterThanOrEqual(15);
  });
});

describe("A work that the graph cannot believe", () => {
  const line = (feature: string, region: string, role: Line["role"], states: string): Line => ({
    work: "invented",
    source: "",
    section: "invented",
    form: "",
    expected: "consistent",
    feature: `feature.${feature}`,
    region: `region.${region}`,
    role,
    states,
  });

  it.each([
    ["a thing before its tool", line("planer-scallops", "england", "existed", "1700")],
    ["a patent’s product a lifetime early", line("silvered-mirror", "france", "existed", "1760")],
    [
      "a span of use that begins before the thing",
      line("thick-nitrocellulose-film", "united-states", "in use", "1850/1930"),
    ],
    ["a habit long after its time", line("cut-nail-hammered-head", "united-states", "in use", "1900/1950")],
    ["a beginning long after the graph’s", line("wire-nail", "france", "not before", "1890")],
  ])("is told by %s", async (_, wrong) => {
    expect((await judgeLine(store, wrong)).agrees).toBe(false);
  });
});
