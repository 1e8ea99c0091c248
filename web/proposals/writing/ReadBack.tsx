import { AlikeList } from "./AlikeList.tsx";
import type { LookedOver } from "./use-look-over.ts";
import styles from "./writing.module.css";

interface Props {
  looked: LookedOver | undefined;
  /** Things at fields that were not touched are told here, and others at their fields. */
  isTouched: boolean;
}

/** The form read back: what it would say, what it still lacks, what stands already. */
export function ReadBack({ looked, isTouched }: Props) {
  const lines = looked?.edits ?? [];
  const problems = looked?.problems ?? [];
  return (
    <section className={styles["back"]} aria-labelledby="read-back">
      <h2 id="read-back">It would say</h2>
      <div aria-live="polite">
        {lines.length > 0 ? (
          lines.map((line) => <LineOfEdit key={line.of} line={line} />)
        ) : (
          <p className={styles["beside"]}>Nothing yet. What it says stands here as soon as it is whole.</p>
        )}
      </div>
      {isTouched && problems.length > 0 ? (
        <div>
          <h3>Still to be said</h3>
          <ul>
            {problems.map(({ message, path }) => (
              <li key={`${path.join()} ${message}`}>{message}</li>
            ))}
          </ul>
        </div>
      ) : null}
      {looked && looked.alike.length > 0 ? (
        <div>
          <h3>May be there already</h3>
          <AlikeList alike={looked.alike} />
        </div>
      ) : null}
    </section>
  );
}

type Line = LookedOver["edits"][number];

/** One edit: the sentence it would be, and of a change that the sentence does not show what would be otherwise. */
function LineOfEdit({ line: { of, does, before, after, rows } }: { line: Line }) {
  const otherwise = does === "CHANGED" && before === after ? rows.filter(({ differs }) => differs) : [];
  return (
    <div>
      <p className={styles["says"]}>
        {does === "WITHDRAWN" ? `No more: ${before ?? of}` : (after ?? of)}
        {does === "CHANGED" && before !== after ? (
          <span className={styles["beside"]}> instead of: {before}</span>
        ) : null}
      </p>
      {otherwise.map((row) => (
        <p key={`${row.what} ${row.before} ${row.after}`}>
          {row.what}: <strong>{row.after ?? "dropped"}</strong>{" "}
          {row.before === null ? null : <span className={styles["beside"]}>instead of: {row.before}</span>}
        </p>
      ))}
    </div>
  );
}
