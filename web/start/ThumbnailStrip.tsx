import type { Finding, Report } from "#server/domain/report.ts";
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
  thick: number;
}

/** One thing seen: its years, dotted where it says nothing, and a cross at the claim where it cannot be of it. */
export function ThumbnailStrip({ finding, axis, claimed, y, thick }: Props) {
  if (finding.label === "silent")
    return <line x1="0%" x2="100%" y1={y} y2={y} className={styles["silent"]} />;
  const isAgainst = finding.label === "contradictory";
  const { possible, usual } = finding;
  return (
    <g className={isAgainst ? styles["contradictory"] : undefined}>
      {possible.outer.map((span) => (
        <SpanBar
          key={`p${span}`}
          axis={axis}
          solid={null}
          pale={span}
          y={y}
          thick={thick}
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
          thick={thick}
          className={styles["bar"]}
        />
      ))}
      {isAgainst ? <Distance finding={finding} axis={axis} claimed={claimed} y={y} /> : null}
    </g>
  );
}

/** From the claim to the nearest year the thing can be of. */
const Distance = ({ finding, axis, claimed, y }: Omit<Props, "thick">) => {
  const isEarly = finding.direction === "early";
  const at = axis.at(isEarly ? claimed[0] : claimed[1], isEarly ? "first" : "last");
  const years = finding.hardness === "physical" ? finding.possible.outer : finding.usual.outer;
  const nearest = isEarly ? years.at(-1)?.[1] : years[0]?.[0];
  return (
    <>
      {nearest === undefined || nearest === null ? null : (
        <line x1={`${at}%`} x2={`${axis.at(nearest)}%`} y1={y} y2={y} className={styles["distance"]} />
      )}
      <Mark
        at={at}
        y={y}
        d={finding.hardness === "physical" ? "M-3 -3l6 6m0 -6l-6 6" : "M-2.2 -2.2l4.4 4.4m0 -4.4l-4.4 4.4"}
        className={finding.hardness === "physical" ? styles["cannot"] : styles["unusual"]}
      />
    </>
  );
};
