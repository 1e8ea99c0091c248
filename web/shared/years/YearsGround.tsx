import { Grid } from "./Grid.tsx";
import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

/** Lines of the axis behind several rows, so that the eye runs down them; stands in a positioned box as wide as the bars. */
export const YearsGround = ({ axis }: { axis: YearAxis }) => (
  <svg width="100%" height="100%" className={styles["ground"]} aria-hidden="true">
    <Grid axis={axis} height="100%" />
  </svg>
);
