import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./PlateView.module.css";
import type { Plate } from "./plate.ts";

interface Props {
  plate: Plate;
  axis: YearAxis;
  claimed?: readonly [Year | null, Year | null];
  className: string | undefined;
}

/** Room that the word "claimed" needs, px. */
const ROOM = 46;

/** The years above a drawing, and the words for the band of what has none. Rows and lists say years themselves. */
export function PlateHead({ plate: { width, scale, band }, axis, claimed = [null, null], className }: Props) {
  const at = (year: Year) => scale.left + (axis.at(year) / 100) * (scale.right - scale.left);
  const percent = (x: number) => `${(x / width) * 100}%`;
  const ends = claimed.filter((year): year is Year => year !== null);
  const middle = ends.length === 0 ? undefined : ends.reduce((sum, year) => sum + at(year), 0) / ends.length;
  const ticks = axis.ticks.filter((year) => middle === undefined || Math.abs(at(year) - middle) > ROOM);
  return (
    <div className={className} aria-hidden="true">
      <svg className={styles["years"]} width="100%" height="20" aria-hidden="true">
        {band === undefined ? null : (
          <text x={percent(band)} y="13">
            no years stated
          </text>
        )}
        {ticks.map((year) => (
          <text key={year} x={percent(at(year))} y="13" textAnchor="middle">
            {year}
          </text>
        ))}
        {middle === undefined ? null : (
          <text x={percent(middle)} y="13" textAnchor="middle" className={styles["claimed"]}>
            claimed
          </text>
        )}
      </svg>
    </div>
  );
}
