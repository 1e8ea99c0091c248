import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

/** The upright lines of an axis behind a row, `height` px long or all of it. */
export const Grid = ({ axis, height }: { axis: YearAxis; height: number | "100%" }) =>
  axis.ticks.map((year) => (
    <line
      key={year}
      x1={`${axis.at(year)}%`}
      x2={`${axis.at(year)}%`}
      y1="0"
      y2={height}
      className={styles["grid"]}
    />
  ));
