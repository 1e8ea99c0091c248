import { useEffect, useLayoutEffect } from "react";
import { beginArrival, takeScroll } from "./arrival.ts";
import { holdPlace } from "./hold-place.ts";

const EVENTS = ["popstate", "pushState", "replaceState"] as const;
const addressNow = () => window.location.pathname + window.location.search;

/**
 * Follows the browser's history: a new page starts at its top once it stands, and one that is gone back to where it was
 * left. An address that is only replaced, as by typing in a search field, is no arrival. `address` is that of the page
 * shown.
 */
export function useArrivals(address: string): void {
  useEffect(() => {
    const left = new Map<string, number>();
    let last = addressNow();
    const begin = (event: Event) => {
      const isElsewhere = addressNow() !== last;
      if (isElsewhere && event.type !== "replaceState") {
        left.set(last, window.scrollY);
        beginArrival(event.type === "pushState" ? 0 : (left.get(addressNow()) ?? 0));
      }
      last = addressNow();
    };
    // The browser would restore the place before the page stands; on a reload it may.
    const letBrowser = () => {
      window.history.scrollRestoration = "auto";
    };
    window.history.scrollRestoration = "manual";
    addEventListener("pagehide", letBrowser);
    for (const type of EVENTS) addEventListener(type, begin);
    return () => {
      letBrowser();
      removeEventListener("pagehide", letBrowser);
      for (const type of EVENTS) removeEventListener(type, begin);
    };
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new address is an arrival.
  useLayoutEffect(() => {
    const scroll = takeScroll();
    return scroll === undefined ? undefined : holdPlace(scroll);
  }, [address]);
}
