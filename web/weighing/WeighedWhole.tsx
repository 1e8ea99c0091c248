import { lazy, memo } from "react";
import { LazyPart } from "./LazyPart.tsx";

const Assumptions = lazy(async () => ({
  default: (await import("./AssumptionsSection.tsx")).AssumptionsSection,
}));

/** Across the page, at its end: what is assumed, and what if it were otherwise. */
export const WeighedWhole = memo(() => (
  <LazyPart what="What is assumed">
    <Assumptions />
  </LazyPart>
));
