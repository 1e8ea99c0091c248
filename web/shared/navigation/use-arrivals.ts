import { useEffect } from "react";
import { beginArrival } from "./arrival.ts";

/** Follows the browser's history: each new page starts at its top; going back keeps the place the browser restores. */
export function useArrivals(): void {
  useEffect(() => {
    let path = location.pathname;
    const arrive = (event: Event) => {
      if (location.pathname === path) return;
      path = location.pathname;
      beginArrival();
      if (event.type === "pushState") window.scrollTo(0, 0);
    };
    for (const type of ["pushState", "replaceState", "popstate"]) addEventListener(type, arrive);
    return () => {
      for (const type of ["pushState", "replaceState", "popstate"]) removeEventListener(type, arrive);
    };
  }, []);
}
