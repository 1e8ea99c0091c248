import { memo, useEffect, useMemo } from "react";
import type { PartId } from "#server/domain/ids.ts";
import { useStages } from "#web/shared/navigation/use-stages.ts";
import type { StripRow } from "#web/strips/strip-row.ts";
import { WeighedBeyond } from "#web/weighing/WeighedBeyond.tsx";
import { WeighedWhole } from "#web/weighing/WeighedWhole.tsx";
import { ConclusionsColumn } from "./ConclusionsColumn.tsx";
import styles from "./ExaminationView.module.css";
import { MeanwhileDialog } from "./MeanwhileDialog.tsx";
import { OnThisPage } from "./OnThisPage.tsx";
import { PieceColumn } from "./PieceColumn.tsx";
import type { StoredExamination } from "./read-answer.ts";
import type { PageGlossary } from "./use-glossary.ts";
import { useStrips } from "./use-strips.ts";
import type { Width } from "./use-width.ts";
import { YearsColumn } from "./YearsColumn.tsx";

interface Props {
  stored: StoredExamination;
  glossary: PageGlossary;
  width: Width;
  chosenPart: PartId | undefined;
  onEdit: (row: StripRow) => void;
  /** Told true once all columns stand. */
  onStanding: (stand: boolean) => void;
}

/**
 * What stands below the headline: piece, years and conclusions, side by side or one after the other. In a file of its own
 * with all fields to record in, so that the conclusion can be read while it is on its way.
 */
export const ExaminationColumns = memo(function ExaminationColumns(props: Props) {
  const { stored, glossary, width, chosenPart, onEdit, onStanding } = props;
  const strips = useStrips(stored, glossary);
  const { answer } = stored;
  const piece = <PieceColumn key="piece" strips={strips} />;
  const years = useMemo(
    () => <YearsColumn key="years" {...{ strips, answer, glossary, chosenPart, onEdit }} />,
    [strips, answer, glossary, chosenPart, onEdit],
  );
  const conclusions = useMemo(
    () => <ConclusionsColumn key="conclusions" answer={answer} glossary={glossary} />,
    [answer, glossary],
  );
  const inOrder = width === "middle" ? [conclusions, piece, years] : [piece, years, conclusions];
  const stage = useStages(inOrder.length);
  const stand = stage === inOrder.length;
  useEffect(() => onStanding(stand), [stand, onStanding]);
  const isWeighed = answer.kind === "examined" && stand;
  return (
    <>
      {answer.kind === "examined" && stored.piece.observations.length > 0 ? <OnThisPage /> : null}
      <div className={styles["columns"]}>
        {inOrder.slice(0, stage)}
        {isWeighed ? (
          <div className={styles["beyond"]}>
            <WeighedBeyond />
          </div>
        ) : null}
      </div>
      {isWeighed ? <WeighedWhole /> : null}
      <MeanwhileDialog />
    </>
  );
});
