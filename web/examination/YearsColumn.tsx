import { useCallback, useMemo, useState } from "react";
import type { PartId } from "#server/domain/ids.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { DatingStrips } from "#web/strips/DatingStrips.tsx";
import type { StripRow } from "#web/strips/strip-row.ts";
import { touchedRows } from "#web/weighing/touched-rows.ts";
import { WeighedYears } from "#web/weighing/WeighedYears.tsx";
import { useTouched } from "#web/weighing/weighing-desk.ts";
import { PathSheet } from "./PathSheet.tsx";
import type { Answer } from "./read-answer.ts";
import type { PageGlossary } from "./use-glossary.ts";
import type { Strips } from "./use-strips.ts";
import styles from "./YearsColumn.module.css";

interface Props {
  strips: Strips;
  answer: Answer;
  glossary: PageGlossary;
  chosenPart: PartId | undefined;
  onEdit: (row: StripRow) => void;
}

const sayCount = (count: number) => (count === 1 ? "1 observation" : `${count} observations`);

/** When each thing seen was made, as strips; and below, the ways from things to years as a graph. */
export function YearsColumn({ strips, answer, glossary, chosenPart, onEdit }: Props) {
  /** A finding, or `all`. */
  const [drawn, setDrawn] = useState<string>();
  const touched = useTouched();
  const notes = useMemo(() => touchedRows(strips.groups, touched), [strips.groups, touched]);
  const onShowWays = useCallback((finding: string) => setDrawn(finding), []);
  if (answer.kind !== "examined") return null;
  const seen = strips.groups.flatMap((group) => group.rows).filter((row) => row.observation !== undefined);
  return (
    <section aria-labelledby="years-heading">
      <h2 id="years-heading" className={styles["heading"]}>
        When each thing seen was made{" "}
        {seen.length > 0 ? <span>· {sayCount(seen.length)}, by part</span> : null}
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
          touched={notes}
          isPage
        />
      )}
      {answer.report.neighbourhood.paths > 0 ? (
        <p className={`screen-only ${styles["draw"]}`}>
          <Button onPress={() => setDrawn("all")}>Draw the ways from things to years</Button>
        </p>
      ) : null}
      <WeighedYears axis={strips.axis} claimed={strips.claimed} />
      <PathSheet answer={answer} strips={strips} names={glossary} drawn={drawn} onDraw={setDrawn} />
    </section>
  );
}
