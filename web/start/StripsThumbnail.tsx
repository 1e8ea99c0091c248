import type { Finding, Report } from "#server/domain/report.ts";
import { Grid } from "../shared/years/Grid.tsx";
import { KnifeLines } from "../shared/years/KnifeLines.tsx";
import type { YearAxis } from "../shared/years/year-axis.ts";
import { countFindings } from "./count-findings.ts";
import styles from "./StripsThumbnail.module.css";
import { ThumbnailStrip } from "./ThumbnailStrip.tsx";

interface Props {
  report: Report;
  axis: YearAxis;
}

const MOST_ROWS = 28;

/** Those that are drawn: contradictions first to be kept, all in the order of the report. */
function rowsOf(findings: readonly Finding[]): readonly Finding[] {
  const observed = findings.filter((finding) => finding.observation !== undefined);
  if (observed.length <= MOST_ROWS) return observed;
  const kept = new Set(observed.toSorted((a, b) => weight(b) - weight(a)).slice(0, MOST_ROWS));
  return observed.filter((finding) => kept.has(finding));
}
const weight = ({ label }: Finding) => (label === "contradictory" ? 2 : label === "consistent" ? 1 : 0);

/** The dating strips of a piece as a small drawing, one thin line a thing seen, with the count in words below. */
export function StripsThumbnail({ report, axis }: Props) {
  const rows = rowsOf(report.findings);
  const step = rows.length > 14 ? 6 : 8;
  const height = rows.length * step;
  const { against, fits, silent } = countFindings(report.findings);
  return (
    <figure className={styles["thumbnail"]}>
      <svg width="100%" height="100%" className={styles["ground"]} aria-hidden="true">
        <Grid axis={axis} height="100%" />
        <KnifeLines axis={axis} years={report.attribution.years} height="100%" />
      </svg>
      <svg width="100%" height={height} className={styles["drawing"]} aria-hidden="true">
        {rows.map((finding, row) => (
          <ThumbnailStrip
            key={finding.id}
            finding={finding}
            axis={axis}
            claimed={report.attribution.years}
            y={row * step + step / 2}
            thick={step - 3.5}
          />
        ))}
      </svg>
      <figcaption className={styles["counts"]}>
        {rows.length === 0 ? (
          <span>Nothing recorded yet</span>
        ) : (
          <>
            <span className={styles["against"]}>
              <i aria-hidden="true">✕</i> {against} against
            </span>
            <span className={styles["fits"]}>
              <i aria-hidden="true">●</i> {fits} fit
            </span>
            <span>
              <i aria-hidden="true">○</i> {silent} say nothing
            </span>
          </>
        )}
      </figcaption>
    </figure>
  );
}
