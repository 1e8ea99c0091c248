import { lazy, Suspense, useCallback, useState } from "react";
import type { PartId } from "#server/domain/ids.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Waiting } from "#web/shared/ui/Waiting.tsx";
import { DatingStrips } from "#web/strips/DatingStrips.tsx";
import type { Glossary } from "#web/strips/glossary.ts";
import type { StripRow } from "#web/strips/strip-row.ts";
import type { Answer } from "./read-answer.ts";
import type { Strips } from "./use-strips.ts";
import styles from "./YearsColumn.module.css";

const PathView = lazy(async () => ({ default: (await import("#web/graph/PathView.tsx")).PathView }));

interface Props {
  strips: Strips;
  answer: Answer;
  glossary: Glossary;
  chosenPart: PartId | undefined;
  onEdit: (row: StripRow) => void;
}

/** When each thing seen was made, as strips; and below, the ways from things to years as a graph. */
export function YearsColumn({ strips, answer, glossary, chosenPart, onEdit }: Props) {
  /** A finding, or `all`. */
  const [drawn, setDrawn] = useState<string>();
  const onShowWays = useCallback((finding: string) => setDrawn(finding), []);
  if (answer.kind !== "examined") return null;
  const seen = strips.groups.flatMap((group) => group.rows).filter((row) => row.observation !== undefined);
  const { report, words } = answer;
  return (
    <section aria-labelledby="years-heading">
      <h2 id="years-heading" className={styles["heading"]}>
        When each thing seen was made <span>· {seen.length} observations, by part</span>
      </h2>
      {strips.groups.length === 0 ? (
        <p className={styles["empty"]}>
          Here each thing you record gets a line on one axis of years, with the claimed years between two
          knife lines. There is nothing yet.
        </p>
      ) : (
        <DatingStrips
          groups={strips.groups}
          axis={strips.axis}
          claimed={strips.claimed}
          glossary={glossary}
          chosenPart={chosenPart}
          onShowWays={onShowWays}
          onEdit={onEdit}
        />
      )}
      {report.neighbourhood.paths > 0 && drawn === undefined ? (
        <p className={`screen-only ${styles["draw"]}`}>
          <Button onPress={() => setDrawn("all")}>Draw the ways from things to years</Button>
        </p>
      ) : null}
      {drawn === undefined ? null : (
        <Suspense fallback={<Waiting what="the path view" />}>
          <PathView
            report={report}
            words={words}
            glossary={glossary}
            axis={strips.axis}
            finding={drawn === "all" ? undefined : drawn}
            onShowAll={() => setDrawn("all")}
            onClose={() => setDrawn(undefined)}
          />
        </Suspense>
      )}
    </section>
  );
}
