import type { StylesheetJson } from "cytoscape";

const SYSTEM: Readonly<Record<string, string>> = {
  Canvas: "white",
  CanvasText: "black",
  LinkText: "blue",
  GrayText: "gray",
};

/** A colour that a canvas can take: names of system colours are asked of the browser. */
function resolved(colour: string): string {
  if (!/^[A-Z][A-Za-z]+$/.test(colour)) return colour === "" ? "black" : colour;
  const probe = document.createElement("span");
  probe.style.color = colour;
  document.body.append(probe);
  const found = getComputedStyle(probe).color;
  probe.remove();
  return found || (SYSTEM[colour] ?? "black");
}

/** How the path view looks, from the page's tokens: text in boxes for terms, bars on the scale for years. */
export function pathLook(token: (name: string) => string): StylesheetJson {
  const colour = (name: string) => resolved(token(name));
  const ink = colour("ink");
  const line = colour("line");
  const quiet = colour("quiet");
  const paper = colour("paper");
  const font = token("sans") || "sans-serif";
  const against = colour("against");
  const doubt = colour("doubt");
  const text = {
    color: ink,
    "font-family": font,
    "font-size": 12,
    "text-wrap": "wrap",
    "text-max-width": "132px",
  };
  return [
    {
      selector: "node",
      style: { ...text, "background-color": paper, "border-color": ink, "border-width": 1.1 },
    },
    {
      selector: "node[look = 'feature'], node[look = 'term']",
      style: {
        label: "data(label)",
        shape: "rectangle",
        width: 148,
        height: "data(tall)",
        "text-valign": "center",
        "text-halign": "center",
      },
    },
    { selector: "node[look = 'feature']", style: { shape: "round-rectangle", "border-width": 1.5 } },
    {
      selector: "node[look = 'date'], node[look = 'open']",
      style: {
        label: "data(label)",
        shape: "ellipse",
        width: 7,
        height: 7,
        "background-color": ink,
        "text-valign": "bottom",
        "text-halign": "data(side)",
        "text-margin-x": -4,
        "text-margin-y": 5,
        "text-max-width": "300px",
        "font-size": 11.5,
      },
    },
    {
      selector: "node[look = 'open']",
      style: {
        "background-color": paper,
        "border-color": quiet,
        color: quiet,
        "text-valign": "center",
        "text-margin-x": 5,
        "text-margin-y": 0,
      },
    },
    { selector: "node[look = 'date'][side = 'left']", style: { "text-margin-x": 4 } },
    {
      selector: "node[verdict = 'against']",
      style: { "background-color": against, "border-color": against, color: against },
    },
    {
      selector: "node[verdict = 'unusual']",
      style: { "background-color": doubt, "border-color": doubt, color: doubt },
    },
    {
      selector: "node[verdict = 'excluded']",
      style: { "background-color": paper, "border-color": quiet, "border-style": "dashed", color: quiet },
    },
    {
      selector: "node[look = 'bar']",
      style: {
        shape: "rectangle",
        width: "data(wide)",
        height: 8,
        "border-width": 0,
        "background-color": ink,
        "background-opacity": 0.3,
        events: "no",
      },
    },
    { selector: "node[look = 'bar'][verdict = 'against']", style: { "background-color": against } },
    { selector: "node[look = 'bar'][verdict = 'unusual']", style: { "background-color": doubt } },
    { selector: "node[look = 'bar'][verdict = 'excluded']", style: { "background-color": quiet, height: 2 } },
    {
      selector: "node[look = 'tick']",
      style: {
        label: "data(label)",
        width: 1,
        height: 1,
        "border-width": 0,
        "background-opacity": 0,
        color: quiet,
        "font-size": 11,
        "text-valign": "center",
        events: "no",
      },
    },
    {
      selector: "node[look = 'grid'], node[look = 'knife']",
      style: {
        shape: "rectangle",
        width: 1,
        height: "data(high)",
        "border-width": 0,
        "background-color": line,
        events: "no",
      },
    },
    { selector: "node[look = 'knife']", style: { "background-color": colour("scribe") } },
    {
      selector: "edge",
      style: {
        width: 1.2,
        "line-color": quiet,
        "target-arrow-color": quiet,
        "target-arrow-shape": "triangle",
        "arrow-scale": 0.7,
        "curve-style": "bezier",
      },
    },
    {
      selector: "edge[excluded = 'yes']",
      style: { "line-style": "dashed", "line-dash-pattern": [4, 4], "target-arrow-shape": "tee" },
    },
    {
      selector: "edge.lit",
      style: { width: 2.4, "line-color": colour("scribe"), "target-arrow-color": colour("scribe") },
    },
    { selector: "node.lit", style: { "border-color": colour("scribe"), "border-width": 2 } },
    { selector: ".faint", style: { opacity: 0.28 } },
  ] as StylesheetJson;
}
