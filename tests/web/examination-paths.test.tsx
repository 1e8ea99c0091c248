import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { plateOverlaps } from "#tests/support/plate-overlaps.ts";
import { PathList } from "#web/graph/PathList.tsx";
import type { PathToDraw, Picture } from "#web/graph/path-picture.ts";
import { pathsToDraw } from "#web/graph/paths-to-draw.ts";
import { placePathRows } from "#web/graph/place-path-rows.ts";
import { placePaths, widthForPaths } from "#web/graph/place-paths.ts";
import { plateOfPaths } from "#web/graph/plate-of-paths.ts";
import { makeYearAxis } from "#web/shared/years/year-axis.ts";

afterEach(cleanup);

const axis = makeYearAxis(1700, 1900);
const aPath = (terms: string[], rest: Partial<PathToDraw> = {}): PathToDraw => ({
  finding: "o1",
  terms: terms.map((name) => ({ id: name, label: name })),
  end: `claim.${terms.at(-1)}`,
  endLabel: "1800 or later",
  years: [[1800, null]],
  verdict: "against",
  says: terms.join(" → "),
  ...rest,
});
const place = (...paths: PathToDraw[]) => placePaths(paths, axis, [1765, 1775], 1190);
const rows = (...paths: PathToDraw[]) => placePathRows(paths, axis, [1765, 1775], 358);
/** Stretches of lines that run behind a box, save where they leave or reach it. */
const behindBoxes = ({ nodes, edges }: Picture) =>
  edges.flatMap(({ id, from, to, points }) =>
    nodes
      .filter((node) => node.box && node.id !== from && node.id !== to)
      .filter(({ x, y, box }) =>
        points.slice(1).some(([x1, y1], i) => {
          const [x0, y0] = points[i] ?? [0, 0];
          return Array.from({ length: 41 }, (_, at) => at / 40).some(
            (t) =>
              Math.abs(x0 + (x1 - x0) * t - x) < (box?.wide ?? 0) / 2 &&
              Math.abs(y0 + (y1 - y0) * t - y) < (box?.high ?? 0) / 2,
          );
        }),
      )
      .map((node) => `${id} behind ${node.id}`),
  );
/** Ways of many lengths that share terms and ends. */
const tangle = Array.from({ length: 18 }, (_, i) =>
  aPath(
    [`feature with a rather long name ${i % 5}`, "saw", "mill", "water wheel"].slice(0, 1 + (i % 4)),
    i % 3 === 0
      ? {
          years: [[null, null]],
          verdict: "silent",
          endLabel: "says nothing: no claim for this place",
          end: `claim.s${i}`,
        }
      : { end: `claim.${i}`, years: [[1700 + i * 11, null]] },
  ),
);
const at = (picture: ReturnType<typeof place>, name: string) => {
  const node = picture.nodes.find((each) => each.id === name);
  if (!node) throw new Error(`nothing placed for ${name}`);
  return node;
};

describe("[X18] the place of the ways", () => {
  it("is a column further right for each step, also where a shorter way leads there", () => {
    const picture = place(aPath(["mark", "saw", "mill"]), aPath(["mark", "mill"]));
    const [mark, saw, mill] = ["term:mark", "term:saw", "term:mill"].map((name) => at(picture, name).x);
    expect(mark).toBeLessThan(saw as number);
    expect(saw).toBeLessThan(mill as number);
    expect(at(picture, "term:mark").kind).toBe("feature");
    expect(at(picture, "term:mill").kind).toBe("term");
  });

  it("of a date is its first year on the scale; of none, before the scale", () => {
    const picture = place(
      aPath(["mark", "saw"]),
      aPath(["mark", "wire"], { years: [[null, null]], verdict: "silent", endLabel: "says nothing" }),
    );
    const dated = picture.nodes.find((node) => node.kind === "date");
    const open = picture.nodes.find((node) => node.kind === "open");
    const tick = picture.scale.ticks.find(({ year }) => year === 1800);
    expect(dated?.x).toBe(tick?.x);
    expect(dated?.span).toEqual([tick?.x, null]);
    expect(open?.x).toBeLessThan(picture.scale.left);
    expect(picture.scale.claimed[0]).toBeLessThan(picture.scale.claimed[1] as number);
  });

  it("lays every end on a row of its own and no two boxes of a column over each other", () => {
    const paths = Array.from({ length: 12 }, (_, i) =>
      aPath([`feature with a rather long name ${i}`, `tool ${i % 3}`], { end: `claim.${i}` }),
    );
    const picture = place(...paths);
    const ends = picture.nodes.filter((node) => node.kind === "date").map((node) => node.y);
    expect(new Set(ends).size).toBe(12);
    const boxes = picture.nodes.filter((node) => node.box !== undefined);
    expect(boxes.length).toBe(15);
    for (const a of boxes)
      for (const b of boxes)
        if (a !== b && a.x === b.x)
          expect(Math.abs(a.y - b.y)).toBeGreaterThanOrEqual(((a.box?.high ?? 0) + (b.box?.high ?? 0)) / 2);
    for (const node of picture.nodes) {
      expect(node.x).toBeGreaterThan(0);
      expect(node.x).toBeLessThan(picture.width);
      expect(node.y).toBeLessThan(picture.height);
    }
  });

  it("stays the same for the same paths, and shares what they share", () => {
    const paths = [aPath(["mark", "saw"]), aPath(["other", "saw"])];
    expect(place(...paths)).toEqual(place(...paths));
    expect(place(...paths).nodes.filter((node) => node.id === "term:saw").length).toBe(1);
  });

  it("an edge is excluded only where every path through it is", () => {
    const picture = place(aPath(["mark", "saw", "mill"], { verdict: "excluded" }), aPath(["mark", "saw"]));
    const excluded = picture.edges.filter((edge) => edge.isExcluded).map((edge) => edge.id);
    expect(excluded).toContain("term:saw term:mill");
    expect(excluded).not.toContain("term:mark term:saw");
  });

  it("is nothing for no paths", () => {
    expect(place().nodes).toEqual([]);
    expect(rows().nodes).toEqual([]);
  });

  it("lets no line run behind a box, and words lie over nothing", () => {
    const picture = place(...tangle);
    expect(picture.edges.length).toBeGreaterThan(15);
    expect(behindBoxes(picture)).toEqual([]);
    expect(plateOverlaps(plateOfPaths(picture))).toEqual([]);
  });

  it("comes to a date along its own row, and stops before a bar that has no beginning", () => {
    const open = aPath(["mark"], { years: [[null, 1850]], end: "claim.until" });
    const picture = place(...tangle, open);
    for (const edge of picture.edges) {
      const end = at(picture, edge.to);
      const [before, last] = edge.points.slice(-2);
      if (end.box) continue;
      expect(before?.[1]).toBe(last?.[1]);
      expect(last?.[0]).toBeLessThan(end.span?.[0] === null ? picture.scale.left : end.x);
    }
  });

  it("is drawn across a narrow page: all years in sight, each way below its feature, the same ways told", () => {
    expect(widthForPaths(tangle)).toBeGreaterThan(358);
    const picture = rows(...tangle);
    expect(picture.width).toBe(358);
    for (const { x } of picture.scale.ticks) {
      expect(x).toBeGreaterThan(0);
      expect(x).toBeLessThan(358);
    }
    expect(plateOverlaps(plateOfPaths(picture))).toEqual([]);
    expect(behindBoxes(picture)).toEqual([]);
    const told = (of: Picture) => of.paths.map(({ finding, says, verdict }) => [finding, says, verdict]);
    expect(told(picture)).toEqual(told(place(...tangle)));
    for (const { nodes } of picture.paths) {
      const ys = nodes.map((id) => at(picture, id).y);
      expect(ys).toEqual(ys.toSorted((a, b) => a - b));
    }
  });
});

const report = {
  findings: [
    {
      id: "o1",
      feature: "feature.mark",
      paths: [
        {
          terms: ["feature.mark", "tool.saw"],
          dated: "claim.saw",
          label: "contradictory",
          hardness: "practice",
          years: [[1800, null]],
          cites: [
            { claim: "claim.way", basis: "common practice" },
            { claim: "claim.saw", basis: "published", source: "source.book", locator: "p. 12" },
          ],
        },
        { terms: ["feature.mark"], label: "silent", reason: "undated", years: [[null, null]], cites: [] },
        {
          terms: ["feature.mark", "tool.disc"],
          dated: "claim.disc",
          label: "way-excluded",
          years: [[null, null]],
          cites: [],
        },
      ],
    },
    { id: "o2", feature: "feature.other", paths: [] },
  ],
} as unknown as Report;
const words = { findings: [{ id: "o1", paths: ["mark → saw: 1800 or later"] }] } as unknown as ReportWords;
const names = {
  labelOf: (name: string) => name.replace(/^[a-z]+\./, ""),
  sourceText: () => "A book, 1999",
};

describe("[X19] the list of ways", () => {
  it("has each path of the report with what it says, its verdict and the source of its date", () => {
    const paths = pathsToDraw(report, words, names);
    expect(paths.map(({ verdict, says, source }) => [verdict, says, source])).toEqual([
      ["unusual", "mark → saw: 1800 or later", "A book, 1999, p. 12, published"],
      ["silent", "mark", undefined],
      ["excluded", "mark → disc", undefined],
    ]);
    expect(paths[1]?.endLabel).toBe("says nothing: no date known");
    expect(pathsToDraw(report, words, names, "o2")).toEqual([]);
  });

  it("[J10] says of a path that it rests on a claim that is disputed, and of no other", () => {
    const findings = report.findings.map((finding) => ({
      ...finding,
      paths: finding.paths.map((path) => ({ ...path, via: ["claim.way"] })),
    }));
    const doubting = (claim: string) =>
      pathsToDraw({ ...report, findings } as unknown as Report, words, {
        ...names,
        isDisputed: (one) => one === claim,
      }).map(({ source }) => source?.endsWith("rests on a claim that is disputed") ?? false);
    expect(doubting("claim.way")).toEqual([true, true, true]);
    expect(doubting("claim.other")).toEqual([false, false, false]);
  });

  it("lights one way at a time by the arrow keys, and puts it out again", () => {
    const onLight = vi.fn();
    const { paths } = place(aPath(["mark", "saw"]), aPath(["mark", "mill"]));
    render(<PathList paths={paths} lit={undefined} onLight={onLight} />);
    const list = screen.getByRole("list", { name: "The ways, one by one" });
    const buttons = screen.getAllByRole("button");
    buttons[0]?.focus();
    fireEvent.keyDown(list, { key: "ArrowDown" });
    expect(document.activeElement).toBe(buttons[1]);
    expect(onLight).toHaveBeenLastCalledWith("path:1");
    cleanup();
    render(<PathList paths={paths} lit="path:1" onLight={onLight} />);
    fireEvent.click(screen.getByRole("button", { pressed: true }));
    expect(onLight).toHaveBeenLastCalledWith(undefined);
  });
});
