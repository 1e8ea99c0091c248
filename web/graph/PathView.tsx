import { useMemo, useState } from "react";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { PathCanvas } from "./PathCanvas.tsx";
import { PathList } from "./PathList.tsx";
import styles from "./PathView.module.css";
import { type NamesForPaths, pathsToDraw } from "./paths-to-draw.ts";
import { placePaths } from "./place-paths.ts";

interface Props {
  report: Report;
  words: ReportWords;
  names: NamesForPaths;
  axis: YearAxis;
  /** The finding whose paths are drawn; all of the piece if undefined. */
  finding: string | undefined;
}

/**
 * The ways from what was seen to its years, as a graph with the years to the right, and the same as an ordered list
 * that lights up one way at a time.
 */
export function PathView({ report, words, names, axis, finding }: Props) {
  const [lit, setLit] = useState<string>();
  const paths = useMemo(() => pathsToDraw(report, words, names, finding), [report, words, names, finding]);
  const picture = useMemo(
    () => placePaths(paths, axis, report.attribution.years),
    [paths, axis, report.attribution.years],
  );
  const of = report.findings.find((one) => one.id === finding);
  const counted = (of ? of.pathCount : report.neighbourhood.paths) - paths.length;
  if (paths.length === 0) return <p>No way leads from here to a year.</p>;
  return (
    <div className={styles["view"]}>
      <PathCanvas picture={picture} lit={lit} onLight={setLit} />
      <PathList paths={picture.paths} lit={lit} onLight={setLit} />
      {counted > 0 ? <p className={styles["more"]}>{counted} more are counted, not drawn.</p> : null}
    </div>
  );
}
