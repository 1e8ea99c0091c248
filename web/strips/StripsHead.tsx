import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./DatingStrips.module.css";
import { Ground } from "./Ground.tsx";

interface Props {
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
}

/** Percent of the axis that the word "claimed" needs free of year numbers on either side. */
const ROOM = 15;

/** The years above the strips; stays in sight while they scroll. Rows say their years themselves, so it is not read out. */
export function StripsHead({ axis, claimed }: Props) {
  const ends = claimed.filter((year): year is Year => year !== null);
  const middle = ends.length === 0 ? undefined : ends.reduce((a, b) => a + axis.at(b), 0) / ends.length;
  return (
    <div className={styles["head"]} aria-hidden="true">
      <span className={styles["plot"]}>
        <Ground axis={axis} claimed={claimed} />
        <svg className={styles["years"]} width="100%" height="20" aria-hidden="true">
          {axis.ticks.map((year) => {
            const at = axis.at(year);
            return middle !== undefined && Math.abs(at - middle) < ROOM ? null : (
              <text key={year} x={`${at}%`} y="13" textAnchor="middle">
                {year}
              </text>
            );
          })}
          {middle === undefined ? null : (
            <text x={`${middle}%`} y="13" textAnchor="middle" className={styles["claimed"]}>
              claimed
            </text>
          )}
        </svg>
      </span>
    </div>
  );
}
