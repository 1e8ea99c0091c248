import type { ClaimSpans } from "./claim-spans.ts";
import { Mark } from "./Mark.tsx";
import { SpanBar } from "./SpanBar.tsx";
import type { YearAxis } from "./year-axis.ts";
import styles from "./years.module.css";

interface Props {
  axis: YearAxis;
  spans: ClaimSpans | undefined;
  /** Habit or fashion is drawn thinner than what is physically so. */
  isSoft?: boolean;
  height?: number;
  className?: string | undefined;
}

/** One dated claim on an axis: a bar where the thing was there, a diamond where it is recorded, a struck line where it is not found. */
export function ClaimBar({ axis, spans, isSoft = false, height = 24, className }: Props) {
  const y = height / 2;
  return (
    <svg className={styles["row"]} width="100%" height={height} aria-hidden="true">
      {spans?.kind === "hold" ? (
        <SpanBar
          axis={axis}
          solid={spans.solid}
          pale={spans.pale}
          y={y}
          thick={isSoft ? 4 : 8}
          className={className}
        />
      ) : null}
      {spans?.kind === "record" ? <Record axis={axis} spans={spans} y={y} /> : null}
      {spans?.kind === "exclude" ? <Excluded axis={axis} spans={spans} y={y} /> : null}
    </svg>
  );
}

const Record = ({ axis, spans, y }: { axis: YearAxis; spans: ClaimSpans; y: number }) => {
  const from = axis.at(spans.pale[0], "first");
  const to = axis.at(spans.pale[1], "last");
  return (
    <g className={styles["record"]}>
      <line x1={`${from}%`} x2={`${to}%`} y1={y} y2={y} />
      <Mark at={(from + to) / 2} y={y} d="M0 -4.5l4.5 4.5 -4.5 4.5 -4.5 -4.5z" />
    </g>
  );
};

const Excluded = ({ axis, spans, y }: { axis: YearAxis; spans: ClaimSpans; y: number }) => {
  const from = axis.at(spans.pale[0], "first");
  const to = axis.at(spans.pale[1], "last");
  return (
    <g className={styles["excluded"]}>
      <line x1={`${from}%`} x2={`${to}%`} y1={y} y2={y} />
      <Mark at={(from + to) / 2} y={y} d="M-4 -4l8 8m0 -8l-8 8" />
    </g>
  );
};
