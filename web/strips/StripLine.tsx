import type { Year, YearsJson } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./StripLine.module.css";
import type { StripRow } from "./strip-row.ts";

interface Props {
  row: Pick<StripRow, "possible" | "usual" | "gap" | "isSilent" | "mark">;
  axis: YearAxis;
}

/** Height of the line and of its bar, px. */
const HIGH = 24;
const MIDDLE = HIGH / 2;
const BAR = 8;

const percent = (place: number) => `${place}%`;

/** Years as bars of one strength, with an arrow where a bar goes on past the axis. */
function Bars({ years, axis, look }: { years: YearsJson; axis: YearAxis; look: string | undefined }) {
  return years.map(([first, last]) => {
    const from = axis.at(first, "first");
    const to = axis.at(last, "last");
    const goesOn = (year: Year | null) => year === null || year < axis.first || year > axis.last;
    return (
      <g key={`${first} ${last}`} className={look}>
        <rect x={percent(from)} width={percent(Math.max(to - from, 0.5))} y={MIDDLE - BAR / 2} height={BAR} />
        {goesOn(first) && from === 0 ? (
          <svg x="0" y={MIDDLE} className={styles["over"]} aria-hidden="true">
            <path d={`M0.3 ${-BAR / 2}l-5.3 ${BAR / 2} 5.3 ${BAR / 2}z`} />
          </svg>
        ) : null}
        {goesOn(last) && to === 100 ? (
          <svg x="100%" y={MIDDLE} className={styles["over"]} aria-hidden="true">
            <path d={`M-0.3 ${-BAR / 2}l5.3 ${BAR / 2} -5.3 ${BAR / 2}z`} />
          </svg>
        ) : null}
      </g>
    );
  });
}

/** The years of one strip: possible pale, usual solid, and the distance from the claim where they miss it. */
export function StripLine({ row, axis }: Props) {
  const isHard = row.mark === "against-hard";
  const isAgainst = isHard || row.mark === "against-soft";
  const look = isHard ? styles["hard"] : isAgainst ? styles["soft"] : styles["plain"];
  if (row.isSilent)
    return (
      <svg className={styles["line"]} width="100%" height={HIGH} aria-hidden="true">
        <line x1="0" x2="100%" y1={MIDDLE} y2={MIDDLE} className={styles["silent"]} />
        <svg x="0" y={MIDDLE} className={styles["over"]} aria-hidden="true">
          <circle r="3.4" className={styles["open"]} />
        </svg>
      </svg>
    );
  return (
    <svg className={`${styles["line"]} ${look}`} width="100%" height={HIGH} aria-hidden="true">
      <Bars years={row.possible} axis={axis} look={styles["possible"]} />
      <Bars years={row.usual} axis={axis} look={styles["usual"]} />
      {row.gap ? (
        <>
          <line
            x1={percent(axis.at(row.gap.from))}
            x2={percent(axis.at(row.gap.to))}
            y1={MIDDLE}
            y2={MIDDLE}
            className={styles["distance"]}
          />
          <svg x={percent(axis.at(row.gap.from))} y={MIDDLE} className={styles["over"]} aria-hidden="true">
            <path d={isHard ? "M-4 -4l8 8M4 -4l-8 8" : "M-4 5l8 -10"} className={styles["cross"]} />
          </svg>
        </>
      ) : null}
    </svg>
  );
}

/** A way of a closed list, thin: solid where the claimed years leave it open, dashed where it is excluded. */
export function WayLine({ years, isOpen, axis }: { years: YearsJson; isOpen: boolean; axis: YearAxis }) {
  return (
    <svg className={styles["line"]} width="100%" height={HIGH} aria-hidden="true">
      {years.map(([first, last]) => (
        <line
          key={`${first} ${last}`}
          x1={percent(axis.at(first, "first"))}
          x2={percent(axis.at(last, "last"))}
          y1={MIDDLE}
          y2={MIDDLE}
          className={isOpen ? styles["way"] : styles["excluded"]}
        />
      ))}
    </svg>
  );
}
