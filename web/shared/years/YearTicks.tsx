import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

/** The numbers of an axis, to stand above or below what is drawn on it. Says nothing to a screen reader: rows say years. */
export const YearTicks = ({ axis }: { axis: YearAxis }) => (
  <svg className={styles["ticks"]} width="100%" height="18" aria-hidden="true">
    {axis.ticks.map((year) => (
      <text key={year} x={`${axis.at(year)}%`} y="12" textAnchor="middle">
        {year}
      </text>
    ))}
  </svg>
);
