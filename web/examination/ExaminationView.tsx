import { useCallback, useMemo, useState } from "react";
import type { ObservationId, PartId } from "#server/domain/ids.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { useShortcuts } from "#web/actions/use-shortcuts.ts";
import type { StripRow } from "#web/strips/strip-row.ts";
import { ConclusionsColumn } from "./ConclusionsColumn.tsx";
import { type Deeds, DeedsProvider, type Desk, DeskProvider } from "./desk.ts";
import styles from "./ExaminationView.module.css";
import { Headline } from "./Headline.tsx";
import { MeanwhileDialog } from "./MeanwhileDialog.tsx";
import { PieceColumn } from "./PieceColumn.tsx";
import type { StoredExamination } from "./read-answer.ts";
import { TitleBlock } from "./TitleBlock.tsx";
import { useExamination } from "./use-examination.ts";
import { useGlossary } from "./use-glossary.ts";
import { useStrips } from "./use-strips.ts";
import { useWidth } from "./use-width.ts";
import { YearsColumn } from "./YearsColumn.tsx";

const ACTIONS = [undoChange];
const NO_PROBLEMS: Desk["problems"] = [];

/** The examination of one piece: the headline, then piece, years and conclusions as the width allows. */
export function ExaminationView({ opened }: { opened: StoredExamination }) {
  const examination = useExamination(opened);
  const { stored, standing } = examination;
  const { glossary, learn } = useGlossary(stored);
  const strips = useStrips(stored, glossary);
  const [chosenPart, choosePart] = useState<PartId>();
  const [editing, editObservation] = useState<ObservationId>();
  const width = useWidth();
  useShortcuts(ACTIONS, examination);

  const onEdit = useCallback((row: StripRow) => {
    choosePart(row.part);
    editObservation(row.observation);
  }, []);

  const examined = stored.answer.kind === "examined" ? stored.answer : undefined;
  const refusedAnswer = stored.answer.kind === "refused" ? stored.answer.problems : NO_PROBLEMS;
  const desk: Desk = {
    ...examination,
    report: examined?.report,
    words: examined?.words,
    problems: standing.kind === "refused" ? standing.problems : refusedAnswer,
    chosenPart,
    editing,
  };
  const { edit } = examination;
  const deeds = useMemo<Deeds>(
    () => ({ edit, glossary, learn, choosePart, editObservation }),
    [edit, glossary, learn],
  );

  const piece = <PieceColumn key="piece" strips={strips} />;
  const years = useMemo(
    () => (
      <YearsColumn
        key="years"
        strips={strips}
        answer={stored.answer}
        glossary={glossary}
        chosenPart={chosenPart}
        onEdit={onEdit}
      />
    ),
    [strips, stored.answer, glossary, chosenPart, onEdit],
  );
  const conclusions = useMemo(
    () => <ConclusionsColumn key="conclusions" answer={stored.answer} glossary={glossary} />,
    [stored.answer, glossary],
  );

  return (
    <DeedsProvider value={deeds}>
      <DeskProvider value={desk}>
        <article className={styles["examination"]} data-width={width}>
          <TitleBlock />
          <Headline />
          <div className={styles["columns"]}>
            {width === "middle" ? [conclusions, piece, years] : [piece, years, conclusions]}
          </div>
          <MeanwhileDialog />
        </article>
      </DeskProvider>
    </DeedsProvider>
  );
}
