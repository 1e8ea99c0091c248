import { lazy, memo } from "react";
import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { LazyPart } from "./LazyPart.tsx";

const Curves = lazy(async () => ({ default: (await import("./DateCurves.tsx")).DateCurves }));
const Weights = lazy(async () => ({ default: (await import("./WeightsSection.tsx")).WeightsSection }));

interface Props {
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** Below the strips, on their axis: how probable each year is, and what each thing seen weighs. */
export const WeighedYears = memo(({ axis, claimed }: Props) => (
  <LazyPart what="How probable each year is">
    <Curves axis={axis} claimed={claimed} />
    <Weights />
  </LazyPart>
));
