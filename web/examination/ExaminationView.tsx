import { useCallback, useMemo, useState } from "react";
import type { ObservationId, PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { useShortcuts } from "#web/actions/use-shortcuts.ts";
import type { StripRow } from "#web/strips/strip-row.ts";
import { WeighedWhole } from "#web/weighing/WeighedWhole.tsx";
import { WeighingOfPiece } from "#web/weighing/WeighingOfPiece.tsx";
import { ConclusionsColumn } from "./ConclusionsColumn.tsx";
import { type Asked, type Deeds, DeedsProvider, type Desk, DeskProvider } from "./desk.ts";
import styles from "./ExaminationView.module.css";
import { chooseOdds } from "./edit-piece.ts";
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
  const [asked, askFor] = useState<Asked>();
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
    asked,
  };
  const { edit } = examination;
  const deeds = useMemo<Deeds>(
    () => ({ edit, glossary, learn, choosePart, askFor, editObservation }),
    [edit, glossary, learn],
  );

  const onRecord = useCallback(
    (part: PartId, feature: TermId, label: string) => {
      learn(feature, label);
      choosePart(part);
      askFor({ part, feature, label });
    },
    [learn],
  );
  const onKeep = useCallback((odds: ChosenOdds) => edit(chooseOdds(odds)), [edit]);

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
          <WeighingOfPiece
            piece={stored.piece}
            revision={examined?.revision}
            mayAsk={standing.kind !== "saving"}
            onKeep={onKeep}
            onRecord={onRecord}
          >
            <TitleBlock />
            <Headline />
            <div className={styles["columns"]}>
              {width === "middle" ? [conclusions, piece, years] : [piece, years, conclusions]}
            </div>
            {examined ? <WeighedWhole /> : null}
          </WeighingOfPiece>
          <MeanwhileDialog />
        </article>
      </DeskProvider>
    </DeedsProvider>
  );
}
