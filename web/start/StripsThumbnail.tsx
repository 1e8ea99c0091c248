import type { Report } from "#server/domain/report.ts";
import { Grid } from "../shared/years/Grid.tsx";
import { KnifeLines } from "../shared/years/KnifeLines.tsx";
import type { YearAxis } from "../shared/years/year-axis.ts";
import { FindingCounts } from "./FindingCounts.tsx";
import styles from "./StripsThumbnail.module.css";
import { ThumbnailStrip } from "./ThumbnailStrip.tsx";

interface Props {
  report: Report;
  axis: YearAxis;
}

/** Most lines drawn: contradictions stand first in a report, so they are never left out. */
const MOST_STRIPS = 24;
const STEP = 9;

/** The dating strips of a piece as a small drawing, one line a thing that is dated, with the count in words below. */
export function StripsThumbnail({ report, axis }: Props) {
  const { findings, attribution } = report;
  const observed = findings.filter((finding) => finding.observation !== undefined);
  const dated = observed.filter((finding) => finding.label !== "silent").slice(0, MOST_STRIPS);
  const isSilent = observed.some((finding) => finding.label === "silent" && finding.seen === "present");
  const height = (dated.length + (isSilent ? 1 : 0)) * STEP;
  return (
    <div className={styles["thumbnail"]}>
      <svg width="100%" height="100%" className={styles["ground"]} aria-hidden="true">
        <Grid axis={axis} height="100%" />
        <KnifeLines axis={axis} years={attribution.years} height="100%" />
      </svg>
      <svg width="100%" height={height} className={styles["drawing"]} aria-hidden="true">
        {dated.map((finding, row) => (
          <ThumbnailStrip
            key={finding.id}
            finding={finding}
            axis={axis}
            claimed={attribution.years}
            y={(row + 0.5) * STEP}
          />
        ))}
        {isSilent ? (
          <line
            x1="0%"
            x2="100%"
            y1={height - STEP / 2}
            y2={height - STEP / 2}
            className={styles["silent"]}
          />
        ) : null}
      </svg>
      <FindingCounts report={report} />
    </div>
  );
}
