import { startTransition, useEffect, useState } from "react";
import { isFirstPage } from "./arrival.ts";

/**
 * How many of a page's large parts are to stand by now. On the first page of a visit one after the other, so that the
 * browser can paint and listen in between; after a navigation all at once, so that one finds the place one left.
 */
export function useStages(all: number): number {
  const [stage, setStage] = useState(isFirstPage() ? 1 : all);
  useEffect(() => {
    if (stage < all) startTransition(() => setStage(stage + 1));
  }, [stage, all]);
  return stage;
}
