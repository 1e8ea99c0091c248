import type { DifferingPlace } from "#server/domain/find-differing.ts";
import styles from "./AgainInWords.module.css";

/** What came of examining a signed report again. */
export interface ExaminedAgain {
  readonly isSame: boolean;
  readonly before: string;
  readonly now: string;
  readonly differences: readonly DifferingPlace[];
  readonly says: string;
}

/** In words first; where it differs, place by place, with the bytes. */
export const AgainInWords = ({ again: { isSame, says, before, differences } }: { again: ExaminedAgain }) => (
  <>
    <p>
      <strong className={styles[isSame ? "holds" : "fails"]}>{isSame ? "The same." : "Not the same."}</strong>{" "}
      {says}
    </p>
    <p className={styles["beside"]}>
      SHA-256 of the signed report <code>{before}</code>
    </p>
    {isSame ? null : (
      <ul className={styles["places"]}>
        {differences.map(({ at, before: was, after }) => (
          <li key={at}>
            <code>{at === "" ? "/" : at}</code>: was <code>{was ?? "nothing"}</code>, is now{" "}
            <code>{after ?? "nothing"}</code>
          </li>
        ))}
      </ul>
    )}
  </>
);
