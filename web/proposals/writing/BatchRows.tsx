import { useState } from "react";
import { Button } from "#web/shared/ui/Button.tsx";
import styles from "../proposals.module.css";
import { AlikeList } from "./AlikeList.tsx";
import type { ReadBatchQuery } from "./Writing.graphql.ts";
import own from "./writing.module.css";

const ROWS_AT_ONCE = 50;

/** A table row by row: what each would say, what is wrong with it, what stands already. Rows with something wrong come first. */
export function BatchRows({ read: { rows, problems, change } }: { read: ReadBatchQuery["readBatch"] }) {
  const [shown, setShown] = useState(ROWS_AT_ONCE);
  const wrong = rows.filter((row) => row.problems.length > 0);
  const sorted = [...wrong, ...rows.filter((row) => row.problems.length === 0)];
  return (
    <section aria-labelledby="rows">
      <h2 id="rows">What it would say</h2>
      <p role="status" className={styles["beside"]}>
        {change
          ? rows.length === 1
            ? "The one row can be proposed."
            : `All ${rows.length} rows can be proposed.`
          : rows.length === 0
            ? "It cannot be read; nothing is proposed."
            : `${wrong.length} of ${rows.length} rows have something wrong; nothing is proposed before all are right.`}
      </p>
      {problems.map(({ message }) => (
        <p key={message} className={own["refusal"]}>
          {message}
        </p>
      ))}
      <ol className={own["rows"]}>
        {sorted.slice(0, shown).map((row) => (
          <li key={row.row}>
            <span className={styles["beside"]}>row {row.row}</span>
            {row.says.map((says) => (
              <span key={says}>{says}</span>
            ))}
            {row.problems.map(({ message, path }) => (
              <span key={`${path.join()} ${message}`} className={own["refusal"]}>
                {path[1] ? `Column ${path[1]}: ` : ""}
                {message}
              </span>
            ))}
            {row.alike.length > 0 ? (
              <div>
                <span className={styles["beside"]}>May be there already:</span>
                <AlikeList alike={row.alike} />
              </div>
            ) : null}
          </li>
        ))}
      </ol>
      {rows.length > shown ? (
        <p>
          <Button onPress={() => setShown(shown + ROWS_AT_ONCE)}>Show more</Button> {shown} of {rows.length}{" "}
          shown
        </p>
      ) : null}
    </section>
  );
}
