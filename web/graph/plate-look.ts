import type { StylesheetJson } from "cytoscape";
import type { Tone } from "./plate.ts";

const SYSTEM: Readonly<Record<string, string>> = {
  Canvas: "white",
  CanvasText: "black",
  LinkText: "blue",
  GrayText: "gray",
};

/** A colour that a canvas can take: names of system colours and mixtures are asked of the browser. */
function resolved(colour: string): string {
  if (!/^[A-Z][A-Za-z]+$|\(/.test(colour)) return colour === "" ? "black" : colour;
  const probe = document.createElement("span");
  probe.style.color = colour;
  document.body.append(probe);
  const found = getComputedStyle(probe).color;
  probe.remove();
  const shares = /^color\(srgb ([\d.]+) ([\d.]+) ([\d.]+)/.exec(found)?.slice(1);
  if (shares) return `rgb(${shares.map((share) => Math.round(Number(share) * 255)).join(",")})`;
  return found || (SYSTEM[colour] ?? "black");
}

const TONES: readonly Tone[] = ["ink", "quiet", "line", "scribe", "against", "doubt"];
const HALIGN = { start: "right", middle: "center", end: "left" } as const;
const JUSTIFY = { start: "left", middle: "center", end: "right" } as const;

/** How a drawing looks, from the page's tokens. */
export function plateLook(token: (name: string) => string): StylesheetJson {
  const colour = (name: string) => resolved(token(name));
  const paper = colour("paper");
  const [quiet, scribe] = [colour("quiet"), colour("scribe")];
  const pale = Number(token("possible")) || 0.2;
  const [ways, dashes] = [{ width: 1.1, "line-color": quiet }, { "line-style": "dashed" }];
  const line = (look: string, style: object) => ({ selector: `edge[look = '${look}']`, style });
  return [
    {
      selector: "*",
      style: { "z-index-compare": "manual", "z-index": "data(layer)", "overlay-opacity": 0 },
    },
    {
      selector: "node",
      style: {
        shape: "ellipse",
        width: "data(wide)",
        height: "data(high)",
        "background-color": paper,
        "border-width": 0,
        "font-family": token("sans") || "sans-serif",
        "font-size": "data(size)",
        "line-height": 1.25,
        "text-wrap": "wrap",
        "text-max-width": "2000px",
        "text-valign": "center",
        "text-halign": "center",
        "text-events": "yes",
        label: "data(label)",
      },
    },
    { selector: "node[form = 'point']", style: { "background-opacity": 0, events: "no" } },
    { selector: "node[points]", style: { shape: "polygon", "shape-polygon-points": "data(points)" } },
    { selector: "node[form = 'box']", style: { shape: "rectangle", "border-width": 1.1 } },
    {
      selector: "node[form = 'box'][round = 'yes']",
      style: { shape: "round-rectangle", "border-width": 1.5 },
    },
    {
      selector: "node[form = 'words']",
      style: {
        "background-opacity": 0,
        "text-background-color": paper,
        "text-background-opacity": 1,
        "text-background-padding": "1px",
      },
    },
    ...(["start", "middle", "end"] as const).map((align) => ({
      selector: `node[align = '${align}']`,
      style: { "text-halign": HALIGN[align], "text-justification": JUSTIFY[align] },
    })),
    { selector: "node[weight = 'strong']", style: { "font-weight": 600 } },
    ...TONES.flatMap((tone) => [
      { selector: `node[tone = '${tone}']`, style: { color: colour(tone), "border-color": colour(tone) } },
      {
        selector: `node[tone = '${tone}'][fill = 'solid'], node[tone = '${tone}'][fill = 'pale']`,
        style: { "background-color": colour(tone) },
      },
    ]),
    { selector: "node[fill = 'open'], node[fill = 'broken']", style: { "border-width": 1.4 } },
    { selector: "node[fill = 'broken']", style: { "border-style": "dashed" } },
    { selector: "node[fill = 'pale']", style: { "background-opacity": pale } },
    { selector: "node[ground = 'yes']", style: { events: "no", "text-events": "no" } },
    {
      selector: "edge",
      style: { ...ways, "curve-style": "straight", "arrow-scale": 0.7, "target-arrow-color": quiet },
    },
    line("grid", { width: 0.7, "line-color": colour("line"), events: "no" }),
    line("knife", { width: 1, "line-color": scribe, events: "no" }),
    line("trunk", { width: 1.1, "line-color": colour("ink"), events: "no" }),
    line("hard", { width: 1.6, "line-color": colour("ink") }),
    line("soft", { width: 1.1, "line-color": colour("ink"), ...dashes, "line-dash-pattern": [5, 3] }),
    line("bare", { width: 0.8 }),
    line("excluded", { ...dashes, "line-dash-pattern": [4, 4] }),
    line("extra", { width: 1.4, "line-color": scribe, events: "no" }),
    { selector: "edge[ends = 'arrow']", style: { "target-arrow-shape": "triangle" } },
    { selector: "edge[ends = 'tee']", style: { "target-arrow-shape": "tee" } },
    { selector: ".faint", style: { opacity: 0.3 } },
    { selector: "edge.lit", style: { "line-color": scribe, "target-arrow-color": scribe } },
    { selector: "edge.lit[look = 'way'], edge.lit[look = 'excluded']", style: { width: 2.2 } },
    {
      selector: "node.lit[form = 'box'], node.lit[fill = 'open']",
      style: { "border-color": scribe, "border-width": 2 },
    },
  ] as StylesheetJson;
}
