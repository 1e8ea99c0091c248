import { memo } from "react";
import { Button as AriaButton } from "react-aria-components/Button";
import type { Observation } from "#server/domain/examination.ts";
import type { ObservationId } from "#server/domain/ids.ts";
import type { PartSummary } from "#server/domain/report.ts";
import { seenWords } from "#web/shared/words/seen-words.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import type { StripMark } from "#web/strips/strip-row.ts";
import { AddObservation } from "./AddObservation.tsx";
import { type Asked, useDeeds } from "./desk.ts";
import { ObservationItem } from "./ObservationItem.tsx";
import { PartFields } from "./PartFields.tsx";
import styles from "./PartList.module.css";
import { RecordAnswer } from "./RecordAnswer.tsx";
import type { PartRow } from "./use-part-rows.ts";

interface Props {
  row: PartRow;
  isOpen: boolean;
  /** Of the observations; only an open part shows them. */
  marks: ReadonlyMap<ObservationId, StripMark> | undefined;
  editing: ObservationId | undefined;
  /** What is to be recorded on it. */
  asked: Asked | undefined;
}

const MARKS: Readonly<Record<PartSummary["speaks"], StripMark | "not-looked">> = {
  "against-hard": "against-hard",
  "against-soft": "against-soft",
  sign: "sign",
  for: "for",
  nothing: "silent",
  "not-looked": "not-looked",
};

function countWords(observations: readonly Observation[]): string {
  const count = (how: Observation["seen"]) => observations.filter(({ seen }) => seen === how).length;
  const said = (
    [
      [count("present"), "seen"],
      [count("absent"), "absent"],
      [count("unseen"), "not to be seen"],
    ] as const
  ).flatMap(([many, how]) => (many > 0 ? [`${many} ${how}`] : []));
  return said.length > 0 ? said.join(", ") : "not looked at";
}

/** One part as a line; open, what was seen on it and the fields to add more. */
export const PartItem = memo(function PartItem({ row, isOpen, marks, editing, asked }: Props) {
  const { choosePart } = useDeeds();
  const { part, depth, seen, speaks, says } = row;
  return (
    <li className={styles["part"]} data-depth={Math.min(depth, 3)} data-open={isOpen}>
      <AriaButton
        className={styles["line"] ?? ""}
        aria-expanded={isOpen}
        onPress={() => choosePart(isOpen ? undefined : part.id)}
      >
        <RowMark mark={seen.length === 0 ? "not-looked" : MARKS[speaks]} />
        <span className={styles["label"]}>{part.label}</span>
        <span className={styles["count"]}>{countWords(seen)}</span>
      </AriaButton>
      {isOpen ? (
        <div className={styles["open"]}>
          <p className={styles["says"]}>{says}</p>
          {seen.length > 0 ? (
            <ul>
              {seen.map((each) => (
                <ObservationItem
                  key={each.id}
                  seen={each}
                  mark={marks?.get(each.id)}
                  isOpen={editing === each.id}
                />
              ))}
            </ul>
          ) : null}
          <div className="screen-only">
            {asked ? <RecordAnswer key={asked.feature} asked={asked} /> : null}
            <AddObservation part={part} recorded={seen} />
            <PartFields part={part} />
          </div>
        </div>
      ) : (
        <PrintedObservations observations={seen} />
      )}
    </li>
  );
});

/** What was seen on a closed part, for paper only: nothing recorded is left out of print. */
function PrintedObservations({ observations }: { observations: readonly Observation[] }) {
  const { glossary } = useDeeds();
  return (
    <ul className={styles["printed"]}>
      {observations.map((seen) => (
        <li key={seen.id}>
          {glossary.labelOf(seen.feature)}: {seenWords(seen)}
          {seen.note === undefined ? null : <i>; {seen.note}</i>}
        </li>
      ))}
    </ul>
  );
}
