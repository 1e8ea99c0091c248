import { useEffect, useMemo, useRef, useState } from "react";
import type { TermId } from "#server/domain/ids.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { PathCanvas } from "./PathCanvas.tsx";
import { PathList } from "./PathList.tsx";
import styles from "./PathView.module.css";
import { pathsToDraw } from "./paths-to-draw.ts";
import { placePaths } from "./place-paths.ts";

interface Props {
  report: Report;
  words: ReportWords;
  glossary: { readonly labelOf: (term: TermId) => string };
  axis: YearAxis;
  /** The finding whose paths are drawn; all of the piece if undefined. */
  finding: string | undefined;
  onShowAll: () => void;
  onClose: () => void;
}

/**
 * The ways from what was seen to its years, as a graph with the years to the right, and the same as an ordered list
 * that lights up one way at a time.
 */
export function PathView({ report, words, glossary, axis, finding, onShowAll, onClose }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [lit, setLit] = useState<string>();
  const paths = useMemo(
    () => pathsToDraw(report, words, glossary.labelOf, finding),
    [report, words, glossary, finding],
  );
  const picture = useMemo(
    () => placePaths(paths, axis, report.attribution.years),
    [paths, axis, report.attribution.years],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: each finding that is asked for takes the reader there.
  useEffect(() => {
    setLit(undefined);
    heading.current?.focus();
  }, [finding]);
  const of = report.findings.find((one) => one.id === finding);
  const counted = (of ? of.pathCount : report.neighbourhood.paths) - paths.length;
  return (
    <section className={styles["view"]} aria-labelledby="paths-heading">
      <h2 id="paths-heading" ref={heading} tabIndex={-1} className={styles["heading"]}>
        {of ? (
          <>
            The ways from <i>{glossary.labelOf(of.feature)}</i> to its years
          </>
        ) : (
          "The ways from what was seen to its years"
        )}{" "}
        <span>· {paths.length === 1 ? "1 way" : `${paths.length} ways`}</span>
      </h2>
      <p className={`screen-only ${styles["deeds"]}`}>
        {of ? (
          <Button look="quiet" onPress={onShowAll}>
            Draw those of the whole piece
          </Button>
        ) : null}
        <Button look="quiet" onPress={onClose}>
          Close
        </Button>
      </p>
      {paths.length === 0 ? (
        <p>No way leads from here to a year.</p>
      ) : (
        <>
          <PathCanvas picture={picture} lit={lit} onLight={setLit} />
          <PathList paths={picture.paths} lit={lit} onLight={setLit} />
        </>
      )}
      {counted > 0 ? <p className={styles["more"]}>{counted} more are counted, not drawn.</p> : null}
    </section>
  );
}
