import type { YearOdds } from "#server/domain/weighing/dates.ts";
import type { Year } from "#server/domain/years.ts";
import { YearTicks } from "#web/shared/years/YearTicks.tsx";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { Aged } from "./Aged.tsx";
import { DateCurve } from "./DateCurve.tsx";
import styles from "./DateCurves.module.css";
import { datesOf } from "./likeliest.ts";
import { useWeighed } from "./weighing-desk.ts";

interface Props {
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** From which share of reworked on its later work is drawn and told. */
const WORTH_TELLING = 0.2;

/** When the piece and each of its parts were made, as curves on the axis of the strips. */
export function DateCurves({ axis, claimed }: Props) {
  const { weighed } = useWeighed();
  const { dates } = weighed.weighing;
  const { parts, whole } = weighed.words;
  if (dates === undefined || parts === undefined)
    return (
      <Aged stage="dates" aria-labelledby="curves-heading" className={styles["section"]}>
        <h2 id="curves-heading">How probable each year is</h2>
        <p className={styles["none"]}>It is worked out after the years.</p>
      </Aged>
    );
  const told = parts.filter(({ tells }) => tells);
  const silent = parts.filter(({ tells }) => !tells);
  const row = (key: string, name: string, says: string, curve: YearOdds, worked?: YearOdds) => (
    <li key={key} className={styles["row"]}>
      <span className={styles["name"]}>{name}</span>
      <DateCurve curve={curve} worked={worked} axis={axis} claimed={claimed} />
      <span className={styles["words"]}>{says}</span>
    </li>
  );
  return (
    <Aged stage="dates" aria-labelledby="curves-heading" className={styles["section"]}>
      <h2 id="curves-heading">
        How probable each year is <span>· the piece, then its parts</span>
      </h2>
      <p className={styles["says"]}>{whole}</p>
      <div className={styles["table"]}>
        <div className={styles["head"]} aria-hidden="true">
          <span className={styles["ticks"]}>
            <YearTicks axis={axis} />
          </span>
        </div>
        <ul>
          {row("whole", "The piece as a whole", "", dates.whole)}
          {told.flatMap(({ parts: all, name, when }) => {
            const of = datesOf(dates, all[0]);
            if (of === undefined) return [];
            return [
              row(
                all.join(),
                name,
                when.replace(/^Made /, ""),
                of.made,
                of.odds.reworked > WORTH_TELLING ? of.worked : undefined,
              ),
            ];
          })}
        </ul>
      </div>
      {silent.length > 0 ? (
        <p className={styles["none"]}>
          The years of {silent.map(({ name }) => name.replace(/^The/, "the")).join(", ")} follow those of the
          piece: nothing seen tells of them.
        </p>
      ) : null}
      <ul className={styles["legend"]} aria-label="How to read the curves">
        <li>
          <svg width="24" height="12" aria-hidden="true">
            <path d="M0 12V9L6 7 11 1 16 4 24 10V12z" className={styles["area"]} />
          </svg>
          each curve to its own height
        </li>
        <li>
          <svg width="24" height="12" aria-hidden="true">
            <path d="M0 4H9V9H0zM14 4H24V9H14z" className={styles["bar"]} />
          </svg>
          years that hold 95 %
        </li>
        <li>
          <svg width="12" height="12" aria-hidden="true">
            <path d="M6 10l4 -6h-8z" className={styles["mode"]} />
          </svg>
          likeliest year
        </li>
        <li>
          <svg width="24" height="12" aria-hidden="true">
            <path d="M0 4H24V9H0z" className={styles["wide"]} />
          </svg>
          the same, more than 150: undetermined
        </li>
        <li>
          <svg width="24" height="12" aria-hidden="true">
            <path d="M0 10L8 3 16 5 24 11" className={styles["worked"]} />
          </svg>
          later work on a part
        </li>
      </ul>
    </Aged>
  );
}
