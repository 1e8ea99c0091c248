import { useEffect, useLayoutEffect } from "react";
import { beginArrival, takeNewPage } from "./arrival.ts";

const EVENTS = ["popstate", "pushState", "replaceState"] as const;

/**
 * Follows the browser's history: a new page starts at its top once it stands; going back keeps the place that the browser
 * restores. An address that is only replaced, as by typing in a search field, is no arrival. `address` is that of the page
 * shown.
 */
export function useArrivals(address: string): void {
  useEffect(() => {
    const address = () => window.location.pathname + window.location.search;
    let last = address();
    const begin = (event: Event) => {
      const isElsewhere = address() !== last;
      last = address();
      if (isElsewhere && event.type !== "replaceState") beginArrival(event.type === "pushState");
    };
    for (const type of EVENTS) addEventListener(type, begin);
    return () => {
      for (const type of EVENTS) removeEventListener(type, begin);
    };
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new address is an arrival.
  useLayoutEffect(() => {
    if (takeNewPage()) window.scrollTo(0, 0);
  }, [address]);
}
