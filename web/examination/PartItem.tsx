import { Button as AriaButton } from "react-aria-components/Button";
import type { Observation, Part } from "#server/domain/examination.ts";
import type { ObservationId } from "#server/domain/ids.ts";
import type { PartSummary } from "#server/domain/report.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import type { StripMark } from "#web/strips/strip-row.ts";
import { AddObservation } from "./AddObservation.tsx";
import { useDesk } from "./desk.ts";
import { ObservationItem } from "./ObservationItem.tsx";
import { PartFields } from "./PartFields.tsx";
import styles from "./PartList.module.css";
import { seenWords } from "./seen-words.ts";

interface Props {
  part: Part;
  depth: number;
  marks: ReadonlyMap<ObservationId, StripMark>;
}

const MARKS: Readonly<Record<PartSummary["speaks"], StripMark | "not-looked">> = {
  "against-hard": "against-hard",
  "against-soft": "against-soft",
  sign: "sign",
  for: "for",
  nothing: "silent",
  "not-looked": "not-looked",
};

const countWords = (seen: number, absent: number, unseen: number): string => {
  const said = [
    ...(seen > 0 ? [`${seen} seen`] : []),
    ...(absent > 0 ? [`${absent} absent`] : []),
    ...(unseen > 0 ? [`${unseen} not to be seen`] : []),
  ];
  return said.length > 0 ? said.join(", ") : "not looked at";
};

/** One part as a line; open, what was seen on it and the fields to add more. */
export function PartItem({ part, depth, marks }: Props) {
  const { piece, report, words, chosenPart, choosePart } = useDesk();
  const isOpen = chosenPart === part.id;
  const summary = report?.parts.find((each) => each.part === part.id);
  const seenHere = piece.observations.filter((seen) => seen.part === part.id);
  const count = (how: string) => seenHere.filter(({ seen }) => seen === how).length;
  return (
    <li className={styles["part"]} data-depth={Math.min(depth, 3)} data-open={isOpen}>
      <AriaButton
        className={styles["line"] ?? ""}
        aria-expanded={isOpen}
        onPress={() => choosePart(isOpen ? undefined : part.id)}
      >
        <RowMark mark={seenHere.length === 0 ? "not-looked" : MARKS[summary?.speaks ?? "not-looked"]} />
        <span className={styles["label"]}>{part.label}</span>
        <span className={styles["count"]}>
          {countWords(count("present"), count("absent"), count("unseen"))}
        </span>
      </AriaButton>
      {isOpen ? (
        <div className={styles["open"]}>
          <p className={styles["says"]}>{words?.parts.find((each) => each.part === part.id)?.says}</p>
          {seenHere.length > 0 ? (
            <ul>
              {seenHere.map((seen) => (
                <ObservationItem key={seen.id} seen={seen} mark={marks.get(seen.id)} />
              ))}
            </ul>
          ) : null}
          <div className="screen-only">
            <AddObservation part={part} />
            <PartFields part={part} />
          </div>
        </div>
      ) : (
        <PrintedObservations observations={seenHere} />
      )}
    </li>
  );
}

/** What was seen on a closed part, for paper only: nothing recorded is left out of print. */
function PrintedObservations({ observations }: { observations: readonly Observation[] }) {
  const { glossary } = useDesk();
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
