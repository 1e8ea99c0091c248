import type { DrawnSpan } from "./claim-spans.ts";
import { Mark } from "./Mark.tsx";
import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

interface Props {
  axis: YearAxis;
  solid: DrawnSpan | null;
  pale: DrawnSpan | null;
  /** Middle of the bar, px from the top of the drawing. */
  y: number;
  /** Thickness in px. */
  thick?: number;
  className?: string | undefined;
}

const arrow = (thick: number, towards: -1 | 1) =>
  `M0 ${-thick / 2}l${towards * (thick * 0.65)} ${thick / 2} ${-towards * (thick * 0.65)} ${thick / 2}z`;

/** Years as a bar: solid where they hold under every reading, pale where under some, an arrow where it goes on. */
export function SpanBar({ axis, solid, pale, y, thick = 8, className }: Props) {
  const outer = pale ?? solid;
  if (!outer) return null;
  const bar = (span: DrawnSpan, look: string | undefined) => {
    const from = axis.at(span[0], "first");
    const to = axis.at(span[1], "last");
    if (from === to && (span[0] ?? axis.first) >= axis.last) return null;
    const width = Math.max(to - from, 0.35);
    return <rect x={`${from}%`} y={y - thick / 2} width={`${width}%`} height={thick} className={look} />;
  };
  const goesOnBefore = outer[0] === null || outer[0] < axis.first;
  const goesOnAfter = outer[1] === null || outer[1] > axis.last;
  const solidGoesOn = (at: 0 | 1) =>
    solid && (solid[at] === null || solid[at] < axis.first || solid[at] > axis.last);
  return (
    <g className={`${styles["bar"]} ${className ?? ""}`}>
      {pale ? bar(pale, styles["pale"]) : null}
      {solid ? bar(solid, styles["solid"]) : null}
      {goesOnBefore ? (
        <Mark
          at={0}
          y={y}
          d={arrow(thick, -1)}
          className={solidGoesOn(0) ? styles["solid"] : styles["pale"]}
        />
      ) : null}
      {goesOnAfter ? (
        <Mark
          at={100}
          y={y}
          d={arrow(thick, 1)}
          className={solidGoesOn(1) ? styles["solid"] : styles["pale"]}
        />
      ) : null}
    </g>
  );
}
