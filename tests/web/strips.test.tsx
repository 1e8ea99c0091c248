import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Part } from "#server/domain/examination.ts";
import type { Finding, Report, Sign } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { YearsJson } from "#server/domain/years.ts";
import { DatingStrips } from "#web/strips/DatingStrips.tsx";
import { findGap } from "#web/strips/find-gap.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import { keepSame } from "#web/strips/keep-same.ts";
import { makeStripGroups } from "#web/strips/make-strip-groups.ts";
import { stripsAxis } from "#web/strips/strips-axis.ts";

afterEach(cleanup);

const ANY: YearsJson = [[null, null]];
const sets = (outer: YearsJson) => ({ outer, inner: outer });

function aFinding(rest: Partial<Record<keyof Finding, unknown>>): Finding {
  return {
    id: "o1",
    observation: rest.id ?? "o1",
    part: "bottom",
    feature: "feature.arcs",
    seen: "present",
    sureness: "sure",
    label: "silent",
    reasons: [],
    possible: sets(ANY),
    usual: sets(ANY),
    openOnlyBy: [],
    support: { claims: [], assumptions: [] },
    ways: [],
    pathCount: 0,
    paths: [],
    setAside: [],
    voidIf: [],
    ...rest,
  } as unknown as Finding;
}

const late = aFinding({
  id: "late",
  label: "contradictory",
  hardness: "physical",
  possible: sets([[1806, null]]),
  usual: sets([[1880, null]]),
  pathCount: 2,
  ways: [
    {
      claim: "claim.way",
      term: "feature.arcs",
      ways: [
        { terms: ["tool.saw"], open: false, years: [[1806, null]] },
        { terms: ["tool.disc", "tool.lathe"], open: true, years: ANY },
      ],
    },
  ],
  setAside: [{ claim: "claim.far", reason: "out-of-scope" }],
  voidIf: [
    { claim: "claim.way", exception: "claim.void", condition: "feature.repair", standing: "not-looked-for" },
  ],
});
const unusual = aFinding({
  id: "unusual",
  label: "contradictory",
  hardness: "practice",
  possible: sets(ANY),
  usual: sets([[1815, null]]),
  part: "case",
});
const fits = aFinding({
  id: "fits",
  label: "consistent",
  possible: sets([[1650, 1850]]),
  usual: sets([[1700, 1800]]),
});
const silent = aFinding({ id: "silent", reason: "undated", part: "case" });
const sign = aFinding({ id: "sign", feature: "feature.holes", part: "case" });
const claimed = aFinding({
  id: "attr.style",
  observation: undefined,
  part: undefined,
  feature: "style.plain",
  label: "consistent",
});
claimed satisfies Finding;

const holes: Sign = {
  observation: "sign",
  part: "case",
  feature: "feature.holes",
  claim: "claim.holes",
  strength: "firm",
  sureness: "sure",
  speaks: "for",
  states: ["later"],
  standing: "stands",
  because: [],
  voidIf: [],
} as unknown as Sign;

const aReport = (findings: readonly Finding[], signs: readonly Sign[] = []): Report =>
  ({
    attribution: { date: "1765/1775", years: [1765, 1775], places: [] },
    findings,
    signs,
  }) as unknown as Report;

const words: ReportWords = {
  headline: "",
  reasons: [],
  findings: [
    {
      id: "late",
      says: "Arcs on the bottom cannot be of 1765 to 1775.",
      short: "31 years too late",
      steps: [
        { depth: 0, says: "Arcs need a saw.", claim: "claim.way", assumed: false },
        { depth: 1, says: "Assumed: nowhere earlier.", assumed: true },
      ],
      paths: [],
    },
    { id: "unusual", says: "Out of its time.", short: "unusual by 40 years", steps: [], paths: [] },
    { id: "fits", says: "Agrees.", short: "agrees", steps: [], paths: ["arcs → saw: 1700–1800"] },
    { id: "silent", says: "Says nothing.", short: "says nothing: no date known", steps: [], paths: [] },
    {
      id: "sign",
      says: "Holes say nothing of the date.",
      short: "says nothing: undated",
      steps: [],
      paths: [],
    },
  ],
  ruleOuts: [],
  signs: [
    {
      observation: "sign",
      claim: "claim.holes",
      says: "Holes on the case speak for a later part.",
      because: [],
      look: ["Would count for nothing if found with an old repair: look for it."],
    },
  ],
  parts: [],
  gaps: [],
  notSearched: [],
} as unknown as ReportWords;

const glossary: Glossary = {
  labelOf: (term) => term.replace(/^[a-z]+\./, ""),
  findClaim: (claim) =>
    claim === "claim.way"
      ? {
          id: claim,
          says: "Arcs need a saw.",
          status: "ACCEPTED",
          strength: "FIRM",
          hardness: "PHYSICAL",
          openDisputes: 1,
          citations: [
            {
              basis: "PUBLISHED",
              locator: "p. 12",
              note: null,
              source: { id: "source.book", text: "A book, 1999." },
            },
            { basis: "FROM_MEMORY", locator: null, note: null, source: null },
          ],
        }
      : undefined,
};
const parts = [
  { id: "case", label: "case" },
  { id: "bottom", label: "drawer bottoms" },
] as unknown as Part[];
const all = [late, unusual, fits, silent, sign, claimed];
const groupsOf = (findings: readonly Finding[] = all, signs: readonly Sign[] = [holes]) =>
  makeStripGroups(aReport(findings, signs), words, parts, glossary);

describe("the distance from the claim", () => {
  it("[X10] runs to the nearest possible years where it cannot be, to the usual ones where it is unusual", () => {
    expect(findGap(late, [1765, 1775])).toEqual({ from: 1775, to: 1806 });
    expect(findGap(unusual, [1765, 1775])).toEqual({ from: 1775, to: 1815 });
  });

  it("runs backwards to what ended before, and to the nearer of two sides", () => {
    const early = aFinding({ label: "contradictory", hardness: "physical", possible: sets([[null, 1700]]) });
    expect(findGap(early, [1765, 1775])).toEqual({ from: 1765, to: 1700 });
    const both = {
      ...early,
      possible: sets([
        [1600, 1700],
        [1790, 1800],
      ]),
    };
    expect(findGap(both, [1765, 1775])).toEqual({ from: 1775, to: 1790 });
  });

  it("is none where nothing contradicts or no year is left", () => {
    expect(findGap(fits, [1765, 1775])).toBeUndefined();
    expect(findGap({ ...late, possible: sets([]) }, [1765, 1775])).toBeUndefined();
  });
});

describe("the rows", () => {
  it("[X9] stand by part in the order of the parts, what is claimed last", () => {
    expect(groupsOf().map((group) => [group.label, group.rows.map((row) => row.id)])).toEqual([
      ["case", ["unusual", "silent", "sign"]],
      ["drawer bottoms", ["late", "fits"]],
      ["What is claimed", ["attr.style"]],
    ]);
  });

  it("[X10] are told apart by mark: cross, stroke, dot, open dot, diamond", () => {
    const marks = Object.fromEntries(
      groupsOf().flatMap((group) => group.rows.map((row) => [row.id, row.mark])),
    );
    expect(marks).toMatchObject({
      late: "against-hard",
      unusual: "against-soft",
      fits: "for",
      silent: "silent",
      sign: "sign",
    });
    const aside = groupsOf(all, [{ ...holes, standing: "set-aside" }]);
    expect(aside[0]?.rows.find((row) => row.id === "sign")?.mark).toBe("sign-set-aside");
    const ofAge = groupsOf(all, [{ ...holes, states: ["original"] }]);
    expect(ofAge[0]?.rows.find((row) => row.id === "sign")?.mark).toBe("sign-of-age");
  });

  it("[X13] that say the same are the same objects; the others are new", () => {
    const before = groupsOf();
    const after = keepSame(
      before,
      groupsOf([late, { ...unusual, usual: sets([[1820, null]]) }, fits, silent, sign, claimed]),
    );
    expect(after[1]).toBe(before[1]);
    expect(after[0]).not.toBe(before[0]);
    expect(after[0]?.rows[0]).not.toBe(before[0]?.rows[0]);
    expect(after[0]?.rows[1]).toBe(before[0]?.rows[1]);
  });
});

describe("[X13] what says the same", () => {
  it("stays the same object at any depth, and all of it where nothing differs", () => {
    const old = { a: { b: [1, { c: 2 }] }, d: "x", e: null };
    expect(keepSame(old, structuredClone(old))).toBe(old);
    const changed = keepSame(old, { ...structuredClone(old), d: "y" });
    expect(changed).toEqual({ a: { b: [1, { c: 2 }] }, d: "y", e: null });
    expect(changed.a).toBe(old.a);
  });

  it("is found by its id where entries were added, taken away or moved", () => {
    const old = [
      { id: "a", n: [1] },
      { id: "b", n: [2] },
    ];
    const fresh = keepSame(old, [
      { id: "new", n: [0] },
      { id: "b", n: [2] },
      { id: "a", n: [9] },
    ]);
    expect(fresh.map(({ id, n }) => [id, ...n])).toEqual([
      ["new", 0],
      ["b", 2],
      ["a", 9],
    ]);
    expect(fresh[1]).toBe(old[1]);
    expect(keepSame(old, old.slice(0, 1))).toEqual([{ id: "a", n: [1] }]);
  });

  it("is never what the fresh value does not say", () => {
    const gone: { a: number; b?: number } = { a: 1, b: 2 };
    expect(Object.keys(keepSame(gone, { a: 1 }))).toEqual(["a"]);
    expect(keepSame<unknown>({ a: [] }, { a: {} })).toEqual({ a: {} });
    expect(keepSame<unknown>(null, { a: 1 })).toEqual({ a: 1 });
  });
});

describe("[X12] the axis", () => {
  it("holds the claim and every stated year", () => {
    const axis = stripsAxis([1765, 1775], groupsOf(), 2026);
    expect(axis.first).toBeLessThanOrEqual(1650);
    expect(axis.last).toBeGreaterThanOrEqual(1880);
  });

  it("goes no more than 220 years before the claim, and not past the examination", () => {
    const old = aFinding({
      label: "consistent",
      possible: sets([[1200, 2400]]),
      usual: sets([[1300, 1400]]),
    });
    const axis = stripsAxis([1765, 1775], groupsOf([old]), 1990);
    expect(axis.first).toBeGreaterThanOrEqual(1500);
    expect(axis.last).toBeLessThanOrEqual(2000);
  });

  it("is not moved by a claim without a beginning", () => {
    const axis = stripsAxis([null, 2026], groupsOf([fits]), 2026);
    expect(axis.first).toBeLessThanOrEqual(1650);
    expect(axis.last).toBeLessThanOrEqual(1900);
  });
});

const draw = (deeds: { onShowWays?: (id: string) => void; onEdit?: () => void } = {}) => {
  const groups = groupsOf();
  render(
    <DatingStrips
      groups={groups}
      axis={stripsAxis([1765, 1775], groups, 2026)}
      claimed={[1765, 1775]}
      glossary={glossary}
      {...deeds}
    />,
  );
};
const row = (name: RegExp) => screen.getByRole("button", { name });

describe("the strips on the page", () => {
  it("[X9] name each row by its whole sentence", () => {
    draw();
    const section = screen.getByRole("region", { name: "drawer bottoms" });
    const names = within(section)
      .getAllByRole("button")
      .map((button) => button.getAttribute("aria-label"));
    expect(names).toEqual([
      "arcs: 31 years too late. Arcs on the bottom cannot be of 1765 to 1775.",
      "arcs: agrees. Agrees.",
    ]);
    expect(row(/^holes/).getAttribute("aria-label")).toContain("Holes on the case speak for a later part.");
  });

  it("[X10] say the distance, the reason of a silence and what a sign speaks for in words", () => {
    draw();
    expect(row(/cannot be of/).textContent).toContain("31 years too late");
    expect(row(/Out of its time/).textContent).toContain("unusual by 40 years");
    expect(row(/^arcs: no date known\. Says nothing/).textContent).toContain("no date known");
    expect(row(/^holes/).textContent).toContain("speaks for a later part");
  });

  it("[J10] tell beside a claim of a chain that it is disputed, with the way there", () => {
    draw();
    fireEvent.click(row(/cannot be of/));
    const [disputed] = screen.getAllByRole("link", { name: "disputed" });
    expect(disputed?.getAttribute("href")).toBe("/claims/claim.way#disputes");
  });

  it("[X11] are gone through by the arrow keys, with one stop of the tab key", () => {
    draw();
    const buttons = screen.getAllByRole("button");
    const inTabOrder = () => buttons.filter((button) => button.getAttribute("tabindex") === "0");
    expect(inTabOrder()).toEqual([buttons[0]]);
    buttons[0]?.focus();
    fireEvent.keyDown(buttons[0] as HTMLElement, { key: "ArrowDown" });
    expect(document.activeElement).toBe(buttons[1]);
    fireEvent.keyDown(buttons[1] as HTMLElement, { key: "End" });
    expect(document.activeElement).toBe(buttons.at(-1));
    fireEvent.keyDown(buttons.at(-1) as HTMLElement, { key: "Home" });
    expect(document.activeElement).toBe(buttons[0]);
    expect(inTabOrder()).toEqual([buttons[0]]);
  });

  it("[X11] unfold the chain with every citation and its basis, below the row", () => {
    draw();
    const arcs = row(/cannot be of/);
    expect(arcs.getAttribute("aria-expanded")).toBe("false");
    fireEvent.click(arcs);
    expect(arcs.getAttribute("aria-expanded")).toBe("true");
    const item = arcs.closest("li") as HTMLElement;
    expect(within(item).getByRole("link", { name: "Arcs need a saw." }).getAttribute("href")).toBe(
      "/claims/claim.way",
    );
    expect(within(item).getByRole("link", { name: "A book, 1999, p. 12" }).getAttribute("href")).toBe(
      "/sources/source.book",
    );
    expect(within(item).getByText("published")).toBeTruthy();
    expect(within(item).getByText("from memory, unconfirmed")).toBeTruthy();
    expect(within(item).getByText("Assumed: nowhere earlier.")).toBeTruthy();
    fireEvent.click(arcs);
    expect(within(item).queryByText("published")).toBeNull();
  });

  it("[X11] show the excluded way, the claim set aside with its reason, and what would void it", () => {
    draw();
    fireEvent.click(row(/cannot be of/));
    const ways = within(screen.getByRole("list", { name: "Ways it can come about" })).getAllByRole(
      "listitem",
    );
    expect(ways.map((way) => way.getAttribute("data-open"))).toEqual(["false", "true"]);
    expect(ways[0]?.textContent).toBe("not by sawway excluded: 1806 or later");
    expect(ways[1]?.textContent).toBe("by disc and latheany year");
    const aside = screen.getByRole("list", { name: "Claims set aside" });
    expect(aside.textContent).toMatch(/meant for another place, form or part/);
    expect(screen.getByText(/Would count for nothing if found with repair: not looked for yet/)).toBeTruthy();
  });

  it("lead to the drawing of the ways and to the record", () => {
    const onShowWays = vi.fn();
    const onEdit = vi.fn();
    draw({ onShowWays, onEdit });
    fireEvent.click(row(/cannot be of/));
    fireEvent.click(screen.getByRole("button", { name: "Draw the 2 paths" }));
    fireEvent.click(screen.getByRole("button", { name: "Change what was seen" }));
    expect(onShowWays).toHaveBeenCalledWith("late");
    expect(onEdit).toHaveBeenCalledWith(expect.objectContaining({ observation: "late" }));
  });

  it("explain every mark in a legend", () => {
    draw();
    const legend = screen.getByRole("list", { name: "How to read the strips" });
    expect(within(legend).getAllByRole("listitem").length).toBe(12);
  });
});
