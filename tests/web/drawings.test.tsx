import { readFileSync } from "node:fs";
import { join } from "node:path";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { Part } from "#server/domain/examination.ts";
import { type Drawn, FormDrawing } from "#web/drawings/FormDrawing.tsx";
import { DRAWN_FORMS, findDrawing, pairShapes, worstOf } from "#web/drawings/part-shapes.ts";
import { shape, type View } from "#web/drawings/shape.ts";

afterEach(cleanup);

const seedTerms = (file: string): { id: string }[] =>
  readFileSync(join(import.meta.dirname, "../../seed-data/terms", file), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));

const part = (id: string, kind: string): Part => ({ id, label: id, kind: `part.${kind}` }) as unknown as Part;
const drawing = (form: string) => {
  const found = findDrawing([form]);
  if (!found) throw new Error(`no drawing of ${form}`);
  return found;
};
const view = (form: string, key: string): View => {
  const found = drawing(form).views.find((each) => each.key === key);
  if (!found) throw new Error(`no view ${key} of ${form}`);
  return found;
};

describe("the drawings", () => {
  it("show every form from the front and from another side, in terms the graph has", () => {
    const kinds = new Set(seedTerms("parts.jsonl").map((term) => term.id));
    const forms = new Set(seedTerms("forms.jsonl").map((term) => term.id));
    for (const { form, views } of DRAWN_FORMS) {
      expect(forms, form).toContain(form);
      expect(views.length, form).toBeGreaterThanOrEqual(2);
      for (const { key, shapes } of views) {
        expect(new Set(shapes.map((each) => each.key)).size, `${form} ${key}`).toBe(shapes.length);
        for (const each of shapes) expect(kinds, `${form} ${key} ${each.key}`).toContain(each.kind);
      }
    }
    expect(DRAWN_FORMS.map(({ form }) => form)).toEqual(
      expect.arrayContaining([
        "form.chest-of-drawers",
        "form.high-chest",
        "form.drop-leaf-table",
        "form.side-chair",
        "form.fall-front-desk",
        "form.wardrobe",
        "form.press",
      ]),
    );
  });

  it("draw every shape as closed outlines of finite numbers", () => {
    for (const { form, views, asSeen = [] } of DRAWN_FORMS)
      for (const { key, shapes } of [...views, ...asSeen.flatMap((each) => each.views)])
        for (const each of shapes) {
          const where = `${form} ${key} ${each.key}`;
          expect(each.outline.trim(), where).toMatch(/z$/i);
          expect(`${each.outline}${each.detail ?? ""}`, where).not.toMatch(/NaN|undefined|Infinity/);
        }
  });

  it("take the drawing of the nearest broader form", () => {
    expect(findDrawing(["form.gate-leg-table", "form.drop-leaf-table", "form.table"])?.form).toBe(
      "form.drop-leaf-table",
    );
    expect(findDrawing(["form.tripod-table", "form.table"])).toBeUndefined();
  });

  it("[X14] follow the legs that were seen on a chair, and keep every part", () => {
    const legs = (...seen: string[]) => {
      const [front] = findDrawing(["form.side-chair"], seen)?.views ?? [];
      return front?.shapes.find((each) => each.key === "front-legs")?.outline;
    };
    const kinds = (...seen: string[]) =>
      findDrawing(["form.side-chair"], seen)?.views.map((each) => each.shapes.map(({ kind }) => kind));
    const cabriole = legs();
    const tapered = legs("feature.odd-leg", "feature.tapered-square-leg");
    expect(legs("feature.cabriole-leg")).toBe(cabriole);
    expect(new Set([cabriole, tapered, legs("feature.marlborough-leg-plinth")]).size).toBe(3);
    expect(tapered).not.toContain("C");
    expect(kinds("feature.tapered-square-leg")).toEqual(kinds());
  });
});

describe("[X14] shapes and parts", () => {
  const front = view("form.chest-of-drawers", "front");
  const fronts = front.shapes.filter((each) => each.kind === "part.drawer-front").map((each) => each.key);

  it("a drawer front stands for drawers where no fronts are recorded", () => {
    const pairs = pairShapes(front, [part("drawers", "drawer")]);
    expect(fronts.map((key) => pairs.get(key))).toEqual(fronts.map(() => ["drawers"]));
    expect(pairs.get("feet")).toEqual([]);
  });

  it("prefer the same kind to a wider one", () => {
    const pairs = pairShapes(front, [part("drawers", "drawer"), part("fronts", "drawer-front")]);
    expect(pairs.get(fronts[0] as string)).toEqual(["fronts"]);
  });

  it("leave its own front to a drawer beside those whose fronts are recorded", () => {
    const within = (each: Part, whole: string) => ({ ...each, within: whole }) as Part;
    const pairs = pairShapes(front, [
      part("upper", "drawer"),
      within(part("upper-fronts", "drawer-front"), "upper"),
      part("lowest", "drawer"),
    ]);
    expect(fronts.map((key) => pairs.get(key)?.[0])).toEqual([
      "upper-fronts",
      "upper-fronts",
      "lowest",
      "lowest",
    ]);
  });

  it("pair several in order, top to bottom", () => {
    const four = ["a", "b", "c", "d"].map((id) => part(id, "drawer"));
    const pairs = pairShapes(front, four);
    expect(fronts.map((key) => pairs.get(key)?.[0])).toEqual(["a", "b", "c", "d"]);
    const two = pairShapes(front, four.slice(0, 2));
    expect(fronts.map((key) => two.get(key)?.[0])).toEqual(["a", "a", "b", "b"]);
    const six = pairShapes(front, [...four, part("e", "drawer"), part("f", "drawer")]);
    expect(fronts.flatMap((key) => six.get(key) ?? [])).toEqual(["a", "b", "c", "d", "e", "f"]);
  });

  it("stand for a narrower kind where neither the same nor a wider one is recorded", () => {
    expect(pairShapes(front, [part("blocks", "foot-block")]).get("feet")).toEqual(["blocks"]);
  });

  it("two sights of one drawer bottom are one thing", () => {
    const pairs = pairShapes(view("form.chest-of-drawers", "drawer"), [
      part("upper", "drawer-bottom"),
      part("lower", "drawer-bottom"),
    ]);
    expect(pairs.get("bottom")).toEqual(["upper", "lower"]);
    expect(pairs.get("under-bottom")).toEqual(["upper", "lower"]);
  });

  it("a part that cannot be pointed at has no shape", () => {
    const pairs = pairShapes(front, [part("finish", "finish")]);
    expect([...pairs.values()].flat()).toEqual([]);
  });

  it("[X15] show the worst that any part says", () => {
    expect(worstOf(["for", "against-soft", "sign"])).toBe("against-soft");
    expect(worstOf(["nothing", "for"])).toBe("for");
    expect(worstOf([])).toBe("not-looked");
  });
});

const square = "M0 0h10v10h-10z";
const small: View = {
  key: "front",
  label: "Front",
  width: 40,
  height: 40,
  shapes: [
    shape("top", "part.top", "top", square),
    shape("drawer", "part.drawer-front", "drawer", square),
    shape("back", "part.back", "back", square),
    shape("foot", "part.foot", "foot", square),
  ],
  dimensions: [],
};
const speaks: Readonly<Record<string, Drawn["speaks"]>> = {
  top: "for",
  drawer: "against-hard",
  back: "against-soft",
  foot: "not-looked",
};

const drawSmall = (onChoose = vi.fn()) =>
  render(
    <FormDrawing
      label="Front of a small chest"
      view={small}
      drawnAs={({ key, label }) => ({
        says: `${label}: ${speaks[key]}`,
        speaks: speaks[key] ?? "not-looked",
        isChosen: key === "back",
      })}
      onChoose={onChoose}
    />,
  );

describe("a drawing on the page", () => {
  it("[X15] hatches by what speaks against a part, and nothing where nothing does", () => {
    drawSmall();
    const hatching = (name: string) =>
      screen.getByRole("button", { name }).querySelector("[data-hatching]")?.getAttribute("data-hatching");
    expect(hatching("drawer: against-hard")).toBe("hard");
    expect(hatching("back: against-soft")).toBe("soft");
    expect(hatching("foot: not-looked")).toBe("dots");
    expect(hatching("top: for")).toBeUndefined();
  });

  it("[X16] is one stop of the tab key, gone through by arrows in reading order", () => {
    drawSmall();
    const names = () =>
      screen
        .getAllByRole("button")
        .filter((button) => button.getAttribute("tabindex") === "0")
        .map((button) => button.getAttribute("aria-label"));
    expect(names()).toEqual(["top: for"]);
    const group = screen.getByRole("group", { name: "Front of a small chest" });
    fireEvent.keyDown(group, { key: "ArrowDown" });
    expect(document.activeElement?.getAttribute("aria-label")).toBe("drawer: against-hard");
    fireEvent.keyDown(group, { key: "End" });
    expect(document.activeElement?.getAttribute("aria-label")).toBe("foot: not-looked");
    fireEvent.keyDown(group, { key: "ArrowRight" });
    expect(names()).toEqual(["foot: not-looked"]);
  });

  it("[X16] chooses a shape by press, Enter or space, and tells which is chosen", () => {
    const onChoose = vi.fn();
    drawSmall(onChoose);
    const drawer = screen.getByRole("button", { name: /^drawer/ });
    fireEvent.click(drawer);
    fireEvent.keyDown(drawer, { key: "Enter" });
    fireEvent.keyDown(drawer, { key: " " });
    expect(onChoose.mock.calls.map(([chosen]) => chosen.key)).toEqual(["drawer", "drawer", "drawer"]);
    expect(screen.getByRole("button", { pressed: true }).getAttribute("aria-label")).toMatch(/^back/);
  });
});
