import type { Core } from "cytoscape";
import { plateLook } from "../plate-look.ts";

const QUERIES = [
  "(prefers-color-scheme: dark)",
  "(forced-colors: active)",
  "(prefers-contrast: more)",
  "print",
];

/** Colours of the drawing are those of the page, read again whenever the page's change. Gives back the way to stop. */
export function followAppearance(graph: Core): () => void {
  const apply = () => {
    const page = getComputedStyle(document.documentElement);
    const token = (name: string) => page.getPropertyValue(`--${name}`).trim();
    graph.style(plateLook(token));
  };
  apply();
  const lists = QUERIES.map((query) => matchMedia(query));
  for (const list of lists) list.addEventListener("change", apply);
  return () => {
    for (const list of lists) list.removeEventListener("change", apply);
  };
}
