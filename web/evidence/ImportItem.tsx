import { Checkbox } from "react-aria-components/Checkbox";
import type { ReadItem, Refusal, Standing } from "#server/domain/sources-in/read-item.ts";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./ImportPage.module.css";
import reading from "./reading.module.css";

interface Props {
  item: ReadItem;
  /** Taken although it seems to be there already. */
  isWanted: boolean;
  onWant: (isWanted: boolean) => void;
}

/** One entry of a list: as it would be cited and stored, or why it would be refused and what to do. */
export function ImportItem({ item, isWanted, onWant }: Props) {
  const { at, line, text, csl, kind, missing, leftOut, standing, refusals } = item;
  return (
    <li value={at}>
      <p className={styles["text"]}>{text}</p>
      {csl === undefined ? (
        <ul className={styles["refusals"]}>
          {refusals.map((refusal) => (
            <li key={`${refusal.line} ${refusal.field} ${refusal.why}`}>Refused: {sayRefusal(refusal)}</li>
          ))}
        </ul>
      ) : (
        <>
          <p className={reading["beside"]}>
            entry {at}, line {line}
            {standing === undefined || standing.same === "title and year" ? (
              <>
                , would be stored as <code>{csl.id}</code>,{" "}
                {kind === undefined ? "kind to be chosen by a person" : `as ${kind}`}
              </>
            ) : null}
          </p>
          {missing.length === 0 ? null : <p className={styles["lacks"]}>Missing: {missing.join(", ")}</p>}
          {leftOut.length === 0 ? null : (
            <p className={reading["beside"]}>Fields that would not be kept: {leftOut.join(", ")}</p>
          )}
          {standing === undefined ? null : (
            <p className={styles["standing"]}>
              <SayStanding standing={standing} />
              {standing.same === "title and year" ? (
                <Checkbox className={styles["want"] ?? ""} isSelected={isWanted} onChange={onWant}>
                  <span aria-hidden="true" className={styles["box"]} /> Another one, take it too
                </Checkbox>
              ) : null}
            </p>
          )}
          <Disclosure summary="As it would be stored">
            <pre className={styles["json"]}>{JSON.stringify(csl, null, 2)}</pre>
          </Disclosure>
        </>
      )}
    </li>
  );
}

function SayStanding({ standing: { id, at, same } }: { standing: Standing }) {
  const isSure = same !== "title and year";
  const which =
    at === undefined ? (
      <>
        , as <TextLink to={`/sources/${id}`}>{id}</TextLink>
      </>
    ) : (
      `: entry ${at} of this list`
    );
  return (
    <span>
      {isSure ? "There already" : "May be there already"}
      {which} (same {same}).{isSure ? " Cite that one." : ""}
    </span>
  );
}

function sayRefusal({ line, field, why, remedy }: Refusal): string {
  const where = [line === undefined ? "" : `line ${line}`, field ?? ""].filter((part) => part !== "");
  return `${where.join(", ")}: ${why} ${remedy}`;
}
