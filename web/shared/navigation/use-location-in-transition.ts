import { startTransition, useEffect, useState } from "react";
import { navigate } from "wouter/use-browser-location";

/** What the router's patched history tells of. */
const EVENTS = ["popstate", "pushState", "replaceState"] as const;

const readPath = () => window.location.pathname;
const readSearch = () => window.location.search;

function useInTransition(read: () => string): string {
  const [value, setValue] = useState(read);
  useEffect(() => {
    const follow = () => startTransition(() => setValue(read()));
    // The address may have changed between the first drawing and now.
    follow();
    for (const event of EVENTS) addEventListener(event, follow);
    return () => {
      for (const event of EVENTS) removeEventListener(event, follow);
    };
  }, [read]);
  return value;
}

/** The router's location: the page one is on stays until the next one is ready, instead of an empty one between them. */
export const useLocationInTransition = () =>
  [useInTransition(readPath), navigate] as [string, typeof navigate];

/** The part of the address after the question mark, in step with the path. */
export const useSearchInTransition = (): string => useInTransition(readSearch);
