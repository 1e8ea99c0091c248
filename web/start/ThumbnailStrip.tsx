import type { Finding, Report } from "#server/domain/report.ts";
import { findGap } from "#web/strips/find-gap.ts";
import { Mark } from "../shared/years/Mark.tsx";
import { SpanBar } from "../shared/years/SpanBar.tsx";
import type { YearAxis } from "../shared/years/year-axis.ts";
import styles from "./StripsThumbnail.module.css";

interface Props {
  finding: Finding;
  axis: YearAxis;
  claimed: Report["attribution"]["years"];
  /** Middle of the strip, px from the top. */
  y: number;
}

const THICK = 5;
const CROSS = "M-3 -3l6 6m0 -6l-6 6";
const STROKE = "M-3 3.5l6 -7";

const lookOf = ({ label, hardness }: Finding) => {
  if (label !== "contradictory") return "plain";
  return hardness === "physical" ? "cannot" : "unusual";
};

/** One thing seen: possible years pale, usual ones solid; where it goes against the claim, the distance and a mark. */
export function ThumbnailStrip({ finding, axis, claimed, y }: Props) {
  const look = lookOf(finding);
  const { possible, usual } = finding;
  const gap = findGap(finding, claimed);
  return (
    <g className={styles[look]}>
      {possible.outer.map((span) => (
        <SpanBar
          key={`p${span}`}
          axis={axis}
          solid={null}
          pale={span}
          y={y}
          thick={THICK}
          className={styles["bar"]}
        />
      ))}
      {usual.outer.map((span) => (
        <SpanBar
          key={`u${span}`}
          axis={axis}
          solid={span}
          pale={null}
          y={y}
          thick={THICK}
          className={styles["bar"]}
        />
      ))}
      {gap ? (
        <>
          <line
            x1={`${axis.at(gap.from)}%`}
            x2={`${axis.at(gap.to)}%`}
            y1={y}
            y2={y}
            className={styles["distance"]}
          />
          <Mark
            at={axis.at(gap.from === claimed[1] ? gap.from : gap.to)}
            y={y}
            d={look === "cannot" ? CROSS : STROKE}
            className={styles["mark"]}
          />
        </>
      ) : null}
    </g>
  );
}
