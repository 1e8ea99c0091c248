import { useCallback, useMemo, useState } from "react";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./PathList.module.css";
import { PathList } from "./PathList.tsx";
import { PAPER_WIDTH, PlateView } from "./PlateView.tsx";
import { type NamesForPaths, pathsToDraw } from "./paths-to-draw.ts";
import { placePathRows } from "./place-path-rows.ts";
import { placePaths, widthForPaths } from "./place-paths.ts";
import { plateOfPaths } from "./plate-of-paths.ts";
import { useFrameWidth } from "./use-frame-width.ts";

interface Props {
  report: Report;
  words: ReportWords;
  names: NamesForPaths;
  axis: YearAxis;
  /** The finding whose paths are drawn; all of the piece if undefined. */
  finding: string | undefined;
}

/**
 * The ways from what was seen to its years, as a graph with the years to the right or, where there is no room, across; and
 * the same as an ordered list that lights up one way at a time.
 */
export function PathView({ report, words, names, axis, finding }: Props) {
  const [lit, setLit] = useState<string>();
  const [width, frame] = useFrameWidth();
  const claimed = report.attribution.years;
  const paths = useMemo(() => pathsToDraw(report, words, names, finding), [report, words, names, finding]);
  const placed = useCallback(
    (wide: number) => {
      const place = wide < widthForPaths(paths) ? placePathRows : placePaths;
      return place(paths, axis, claimed, wide);
    },
    [paths, axis, claimed],
  );
  const paper = useMemo(() => placed(PAPER_WIDTH), [placed]);
  const picture = useMemo(() => (width === undefined ? undefined : placed(width)), [placed, width]);
  const plate = useMemo(() => picture && plateOfPaths(picture), [picture]);
  const paperPlate = useMemo(() => plateOfPaths(paper), [paper]);
  const told = (picture ?? paper).paths;
  const isLit = useMemo(() => {
    const path = told.find(({ id }) => id === lit);
    return path && new Set([...path.nodes, ...path.edges]);
  }, [told, lit]);
  const lightThrough = useCallback(
    (part: string | undefined) =>
      setLit(told.find(({ nodes, edges }) => part && (nodes.includes(part) || edges.includes(part)))?.id),
    [told],
  );
  const of = report.findings.find((one) => one.id === finding);
  const counted = (of ? of.pathCount : report.neighbourhood.paths) - paths.length;
  if (paths.length === 0) return <p>No way leads from here to a year.</p>;
  return (
    <div className={styles["view"]}>
      <PlateView
        plate={plate}
        paper={paperPlate}
        frame={frame}
        axis={axis}
        claimed={claimed}
        lit={isLit}
        onTap={lightThrough}
        label="The ways, drawn. The list below says the same."
      />
      <PathList paths={told} lit={lit} onLight={setLit} />
      {counted > 0 ? <p className={styles["more"]}>{counted} more are counted, not drawn.</p> : null}
    </div>
  );
}
