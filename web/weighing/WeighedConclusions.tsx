import { lazy, memo } from "react";
import { LazyPart } from "./LazyPart.tsx";

const Mends = lazy(async () => ({ default: (await import("./MendsSection.tsx")).MendsSection }));
const Origins = lazy(async () => ({ default: (await import("./OriginsSection.tsx")).OriginsSection }));
const Parts = lazy(async () => ({ default: (await import("./PartsSection.tsx")).PartsSection }));

/** What the weighing concludes: what would have to be true, how many pieces it is, and what each part is. */
export const WeighedConclusions = memo(() => (
  <LazyPart what="What would have to be true">
    <Mends />
    <Origins />
    <Parts />
  </LazyPart>
));
