import { useCallback, useMemo, useState } from "react";
import type { ObservationId, PartId, TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import { undoChange } from "#web/actions/undo-change.ts";
import { useShortcuts } from "#web/actions/use-shortcuts.ts";
import type { ChangedSinceFieldsFragment } from "#web/answers/ChangedSince.graphql.ts";
import { ChangedSince } from "#web/answers/ChangedSince.tsx";
import { useFetched } from "#web/shared/ui/use-fetched.ts";
import { Waiting } from "#web/shared/ui/Waiting.tsx";
import type { StripRow } from "#web/strips/strip-row.ts";
import { WeighingOfPiece } from "#web/weighing/WeighingOfPiece.tsx";
import { type Asked, type Deeds, DeedsProvider, type Desk, DeskProvider } from "./desk.ts";
import styles from "./ExaminationView.module.css";
import { chooseOdds } from "./edit-piece.ts";
import { Headline } from "./Headline.tsx";
import type { StoredExamination } from "./read-answer.ts";
import type { AccessFieldsFragment } from "./SeenBy.graphql.ts";
import { SeenBy } from "./SeenBy.tsx";
import { TitleBlock } from "./TitleBlock.tsx";
import { useExamination } from "./use-examination.ts";
import { useGlossary } from "./use-glossary.ts";
import { useWidth } from "./use-width.ts";

const loadColumns = () => import("./ExaminationColumns.tsx");
const loadLiveLine = () => import("./LiveLine.tsx");
const loadChronicle = () => import("#web/shared/chronicle/PieceChronicle.tsx");

const ACTIONS = [undoChange];
const NO_PROBLEMS: Desk["problems"] = [];

interface Props {
  opened: StoredExamination;
  /** What changed under it before it was opened. */
  changed: ChangedSinceFieldsFragment | null;
  /** Who sees it, where there are accounts. */
  access: AccessFieldsFragment | null;
}

/** The examination of one piece: the headline, then piece, years and conclusions as the width allows. */
export function ExaminationView({ opened, changed, access }: Props) {
  const examination = useExamination(opened);
  const { stored, standing } = examination;
  const { glossary, learn } = useGlossary(stored);
  const [chosenPart, choosePart] = useState<PartId>();
  const [editing, editObservation] = useState<ObservationId>();
  const [asked, askFor] = useState<Asked>();
  const [stands, setStands] = useState(false);
  const width = useWidth();
  const ExaminationColumns = useFetched(loadColumns)?.ExaminationColumns;
  const PieceChronicle = useFetched(loadChronicle)?.PieceChronicle;
  const LiveLine = useFetched(loadLiveLine)?.LiveLine;
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
  const { edit, shown } = examination;
  const deeds = useMemo<Deeds>(
    () => ({ edit, shown, glossary, learn, choosePart, askFor, editObservation }),
    [edit, shown, glossary, learn],
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

  return (
    <DeedsProvider value={deeds}>
      <DeskProvider value={desk}>
        <article className={styles["examination"]} data-width={width}>
          <WeighingOfPiece
            piece={stored.piece}
            revision={examined?.revision}
            mayAsk={standing.kind !== "saving" && stands}
            onKeep={onKeep}
            onRecord={onRecord}
          >
            <TitleBlock />
            <Headline />
            {changed && stored.version === opened.version ? <ChangedSince changed={changed} /> : null}
            {ExaminationColumns ? (
              <ExaminationColumns
                {...{ stored, glossary, width, chosenPart, onEdit }}
                onStanding={setStands}
              />
            ) : (
              <Waiting what="what was recorded" isPage />
            )}
            {access ? <SeenBy id={stored.id} opened={access} /> : null}
            {PieceChronicle ? <PieceChronicle examination={stored.id} /> : null}
          </WeighingOfPiece>
          {LiveLine && ExaminationColumns ? <LiveLine /> : null}
        </article>
      </DeskProvider>
    </DeedsProvider>
  );
}
