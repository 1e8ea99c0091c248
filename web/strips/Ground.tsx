import { memo } from "react";
import type { Year } from "#server/domain/years.ts";
import { Grid } from "#web/shared/years/Grid.tsx";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./StripLine.module.css";

interface Props {
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** What lies behind every row and joins them: year lines, and the claimed years as two knife lines with a band between. */
export const Ground = memo(function Ground({ axis, claimed }: Props) {
  const from = axis.at(claimed[0], "first");
  const to = axis.at(claimed[1], "last");
  return (
    <svg className={styles["ground"]} width="100%" height="100%" aria-hidden="true">
      <g className={styles["grid"]}>
        <Grid axis={axis} height={2000} />
      </g>
      <rect
        x={`${from}%`}
        width={`${Math.max(to - from, 0.4)}%`}
        y="0"
        height="100%"
        className={styles["band"]}
      />
      {claimed[0] === null ? null : (
        <line x1={`${from}%`} x2={`${from}%`} y1="0" y2="100%" className={styles["knife"]} />
      )}
      {claimed[1] === null ? null : (
        <line x1={`${to}%`} x2={`${to}%`} y1="0" y2="100%" className={styles["knife"]} />
      )}
    </svg>
  );
});
