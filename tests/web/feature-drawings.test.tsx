import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "#web/drawings/FeatureDrawing.tsx";
import { ALL_DRAWINGS, type DrawingKey } from "#web/drawings/features/all-drawings.ts";
import { DrawnFeature } from "#web/drawings/features/DrawnFeature.tsx";

afterEach(cleanup);

const ARCS = id<"term">("feature.circular-saw-mark");
const SAW_MARK = id<"term">("feature.saw-mark");
const count = (selector: string, within: Element): number => within.querySelectorAll(selector).length;
const widthOf = (element: Element | null): number => Number(element?.getAttribute("width"));

describe("the drawing of a term", () => {
  it("comes when its file has come, and its place is kept until then", async () => {
    const { container } = render(<FeatureDrawing term={ARCS} size={240} />);
    const waiting = container.querySelector("svg");
    expect(waiting?.getAttribute("aria-hidden")).toBe("true");
    expect(widthOf(waiting)).toBe(240);
    const drawing = await screen.findByRole("img");
    expect(widthOf(drawing)).toBe(240);
    expect(container.querySelectorAll("svg")).toHaveLength(1);
  });

  it("is one picture whose name says what it is and what tells", async () => {
    render(<FeatureDrawing term={ARCS} size={240} />);
    const drawing = await screen.findByRole("img", { name: /^Circular-saw mark\. Arcs of one radius/ });
    expect(drawing.querySelector("title")?.textContent).toBe("Circular-saw mark");
  });

  it("is that of the nearest broader term where the term has none", async () => {
    render(
      <FeatureDrawing term={id("feature.old-kerf-under-first-finish")} broaderTerms={[SAW_MARK]} size={96} />,
    );
    expect((await screen.findByRole("img")).getAttribute("data-drawing")).toBe("saw-marks");
  });

  it("is nothing at all where none is known", () => {
    const { container } = render(<FeatureDrawing term={id("feature.orange-fluorescence")} size={240} />);
    expect(container.innerHTML).toBe("");
  });
});

const draw = (drawing: DrawingKey, size: number): Element => {
  const { container } = render(<DrawnFeature drawing={drawing} size={size} />);
  return container.firstElementChild as Element;
};

describe("a drawing at its size", () => {
  it("has words and a scale bar where there is room for them, and none at 64 px", () => {
    const large = draw("thick-uneven-veneer", 240);
    expect(large.textContent).toContain("3 mm");
    expect(large.textContent).toContain("ground");
    expect(count("text", draw("thick-uneven-veneer", 64))).toBe(0);
  });

  it("keeps its words at 11 px whatever its size", () => {
    for (const size of [160, 240, 480]) {
      const word = draw("hand-cut-dovetail", size).querySelector("text");
      expect((Number(word?.getAttribute("font-size")) * size) / 240).toBeCloseTo(11, 6);
    }
  });

  it("has fewer lines below 96 px", () => {
    const lines = (size: number): number =>
      [...draw("sash-saw-mark", size).querySelectorAll("path")].reduce(
        (sum, path) => sum + (path.getAttribute("d")?.match(/M/g) ?? []).length,
        0,
      );
    expect(lines(64)).toBeLessThan(lines(96) - 10);
    expect(lines(96)).toBe(lines(140));
  });

  it("keeps the toes of a crow's foot the same length in CSS pixels, shorter in a small drawing", () => {
    const toe = (size: number): number => {
      const d = draw("gimlet-point-screw", size).querySelector("[data-tells]")?.getAttribute("d") ?? "";
      const [, second = ""] = d.split("M").filter(Boolean);
      const [x0, y0, x1, y1] = (second.match(/-?[\d.]+/g) ?? []).map(Number) as [
        number,
        number,
        number,
        number,
      ];
      return (Math.hypot(x1 - x0, y1 - y0) * size) / 240;
    };
    for (const size of [40, 64]) expect(Math.abs(toe(size) - 5)).toBeLessThan(0.15);
    for (const size of [96, 240]) expect(Math.abs(toe(size) - 6.5)).toBeLessThan(0.15);
  });

  it("hatches a cut face by lines held inside it, closer together when small", () => {
    const hatching = (size: number): number =>
      (draw("ovolo-profile", size).querySelector("[data-tone=section]")?.getAttribute("d")?.match(/M/g) ?? [])
        .length;
    expect(hatching(240)).toBe(Math.ceil((2 * 240) / (6 * Math.SQRT2)));
    expect(hatching(64)).toBeLessThan(hatching(240));
    const drawing = draw("ovolo-profile", 240);
    const clip = drawing.querySelector("[data-tone=section]")?.getAttribute("clip-path");
    const shape = drawing.querySelector(`[id="${clip?.slice(5, -1)}"] path`);
    expect(shape?.getAttribute("d")).toMatch(/z$/);
  });
});

describe("several drawings on one page", () => {
  it("never share an id, and find every id they use", () => {
    const keys = Object.keys(ALL_DRAWINGS) as DrawingKey[];
    const { container } = render(
      <>
        {keys.flatMap((key) =>
          [64, 240].map((size) => <DrawnFeature key={`${key} ${size}`} drawing={key} size={size} />),
        )}
      </>,
    );
    const ids = [...container.querySelectorAll("[id]")].map((element) => element.id);
    expect(ids.length).toBeGreaterThan(300);
    expect(new Set(ids).size).toBe(ids.length);
    const used = [...container.innerHTML.matchAll(/url\((?:&quot;|")?#([^)&"]+)/g)].map(([, name]) => name);
    expect(used.length).toBeGreaterThan(300);
    expect(used.filter((name) => !ids.includes(name ?? ""))).toEqual([]);
  });

  it("take every colour from the page, and none of their own", () => {
    const keys = Object.keys(ALL_DRAWINGS) as DrawingKey[];
    const { container } = render(
      <>
        {keys.map((key) => (
          <DrawnFeature key={key} drawing={key} size={240} />
        ))}
      </>,
    );
    const colours = [...container.querySelectorAll("[fill],[stroke]")].flatMap((element) => [
      element.getAttribute("fill"),
      element.getAttribute("stroke"),
    ]);
    expect(new Set(colours.filter((colour) => colour !== null))).toEqual(new Set(["currentColor"]));
  });
});
