import type { YearOdds } from "#server/domain/weighing/dates.ts";
import type { Year } from "#server/domain/years.ts";
import { Mark } from "#web/shared/years/Mark.tsx";
import { SpanBar } from "#web/shared/years/SpanBar.tsx";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { Ground } from "#web/strips/Ground.tsx";
import { CURVE_HIGH, curvePath, isUndetermined } from "./curve-path.ts";
import styles from "./DateCurves.module.css";

interface Props {
  curve: YearOdds;
  /** Of later work on the part, drawn as a broken line. */
  worked?: YearOdds | undefined;
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** Height of a curve and of its bars, px. */
const HIGH = 30;
const BARS = 9;

/** One curve on the axis of the strips: below it bars for the years that hold 95 %, and a mark at the likeliest. */
export function DateCurve({ curve, worked, axis, claimed }: Props) {
  const isWide = isUndetermined(curve);
  return (
    <span className={styles["plot"]} aria-hidden="true">
      <Ground axis={axis} claimed={claimed} />
      <svg
        className={styles["curve"]}
        width="100%"
        height={HIGH}
        viewBox={`0 0 100 ${CURVE_HIGH}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path d={curvePath(curve, axis)} className={isWide ? styles["wide"] : styles["area"]} />
        {worked ? <path d={curvePath(worked, axis)} className={styles["worked"]} /> : null}
      </svg>
      <svg className={styles["bars"]} width="100%" height={BARS} aria-hidden="true">
        {curve.credible.years.map((span) => (
          <SpanBar
            key={String(span)}
            axis={axis}
            solid={isWide ? null : span}
            pale={isWide ? span : null}
            y={BARS / 2}
            thick={5}
          />
        ))}
        {isWide || curve.mode < axis.first || curve.mode > axis.last ? null : (
          <Mark at={axis.at(curve.mode)} y={0} d="M0 0l4 -6h-8z" className={styles["mode"]} />
        )}
      </svg>
    </span>
  );
}
