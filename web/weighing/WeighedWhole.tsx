import { lazy, memo } from "react";
import { LazyPart } from "./LazyPart.tsx";

const Looks = lazy(async () => ({ default: (await import("./LooksSection.tsx")).LooksSection }));
const Rivals = lazy(async () => ({ default: (await import("./RivalsSection.tsx")).RivalsSection }));
const Assumptions = lazy(async () => ({
  default: (await import("./AssumptionsSection.tsx")).AssumptionsSection,
}));

/** Across the page: what to look at next, the rival stories, and what is assumed. */
export const WeighedWhole = memo(() => (
  <LazyPart what="What to look at next, the rival stories and what is assumed">
    <Looks />
    <Rivals />
    <Assumptions />
  </LazyPart>
));
