import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

interface Props {
  axis: YearAxis;
  /** First and last claimed year; null where nothing bounds that end. */
  years: readonly [Year | null, Year | null];
  height: number | "100%";
}

/** The claimed years: a knife line at each end, a faint band between. */
export function KnifeLines({ axis, years, height }: Props) {
  const from = axis.at(years[0], "first");
  const to = axis.at(years[1], "last");
  return (
    <g className={styles["claimed"]}>
      <rect x={`${from}%`} width={`${to - from}%`} y="0" height={height} />
      {years[0] === null ? null : <line x1={`${from}%`} x2={`${from}%`} y1="0" y2={height} />}
      {years[1] === null || to === from ? null : <line x1={`${to}%`} x2={`${to}%`} y1="0" y2={height} />}
    </g>
  );
}
