import { memo } from "react";
import type { Year } from "#server/domain/years.ts";
import { Grid } from "#web/shared/years/Grid.tsx";
import { KnifeLines } from "#web/shared/years/KnifeLines.tsx";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./StripLine.module.css";

interface Props {
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** What lies behind every row and joins them: year lines, and the claimed years as two knife lines with a band between. */
export const Ground = memo(function Ground({ axis, claimed }: Props) {
  return (
    <svg className={styles["ground"]} width="100%" height="100%" aria-hidden="true">
      <Grid axis={axis} height="100%" />
      <KnifeLines axis={axis} years={claimed} height="100%" />
    </svg>
  );
});
