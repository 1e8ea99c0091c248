import { Link } from "wouter";
import styles from "./chronicle.module.css";

/** What came of the changes of another house. */
export interface TakenChanges {
  readonly house: string;
  readonly until: { readonly revision: number; readonly hash: string };
  readonly proposed: readonly {
    readonly id?: string;
    readonly title: string;
    readonly alike: readonly string[];
    readonly changedOnBothSides: readonly string[];
  }[];
  readonly same: number;
  readonly known: number;
  readonly left: readonly { readonly ids: readonly string[]; readonly why: string }[];
}

/** In words: what is proposed, what is here already, what is left and why. */
export const TakenInWords = ({
  taken: { house, until, proposed, same, known, left },
  isLook,
}: {
  taken: TakenChanges;
  isLook: boolean;
}) => (
  <>
    <p className={styles["says"]}>
      From <code className={styles["code"]}>{house}</code>, up to its revision {until.revision}; the signature
      holds. {sayProposed(proposed.length, isLook)} {same} {same === 1 ? "thing stands" : "things stand"} here
      as there, {known} {known === 1 ? "change was" : "changes were"} proposed before, {left.length}{" "}
      {left.length === 1 ? "is" : "are"} left.
    </p>
    <ul className={styles["list"]}>
      {proposed.map(({ id, title, alike, changedOnBothSides }) => (
        <li key={id ?? title}>
          <p className={styles["says"]}>
            {id === undefined ? title : <Link href={`/house/proposals/${id}`}>{title}</Link>}
          </p>
          {alike.length === 0 ? null : (
            <p className={styles["beside"]}>May be here already, as {alike.join(", ")}</p>
          )}
          {changedOnBothSides.length === 0 ? null : (
            <p className={styles["beside"]}>Both houses changed {changedOnBothSides.join(", ")}</p>
          )}
        </li>
      ))}
      {left.map(({ ids, why }) => (
        <li key={ids.join()}>
          <p className={styles["says"]}>
            <strong>Left:</strong> {ids.join(", ")}. {why}
          </p>
        </li>
      ))}
    </ul>
  </>
);

function sayProposed(count: number, isLook: boolean): string {
  if (count === 0) return "Nothing of it is to be proposed.";
  const what = count === 1 ? "1 proposal" : `${count} proposals`;
  return isLook ? `It would make ${what}.` : `It made ${what}.`;
}
