import { useSyncExternalStore } from "react";

/** wide: three columns. middle: conclusions first, then two columns. narrow: one column. */
export type Width = "wide" | "middle" | "narrow";

const QUERIES = { wide: "(min-width: 1280px)", middle: "(min-width: 800px)" } as const;

function subscribe(onChange: () => void): () => void {
  const lists = Object.values(QUERIES).map((query) => matchMedia(query));
  for (const list of lists) list.addEventListener("change", onChange);
  return () => {
    for (const list of lists) list.removeEventListener("change", onChange);
  };
}

const read = (): Width => {
  if (matchMedia(QUERIES.wide).matches) return "wide";
  return matchMedia(QUERIES.middle).matches ? "middle" : "narrow";
};

/** How many columns there is room for. Known in script too, so that the order one tabs through is the order one sees. */
export const useWidth = (): Width => useSyncExternalStore(subscribe, read, () => "wide");
