import { CitationLine } from "../shared/claims/CitationLine.tsx";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { strengthWords } from "../shared/words/claim-words.ts";
import { groupRows, type RowGroup, type TableGroup } from "./group-rows.ts";
import type { ReferenceTablesFragment } from "./ReferenceTables.graphql.ts";
import styles from "./ReferenceTables.module.css";
import reading from "./reading.module.css";
import { sayMeasured } from "./say-measured.ts";

/** Quantities that a table shows without being unfolded. */
const MOST_AT_ONCE = 10;

/** What is measured and counted of a term: a table for each kind of measure, values that differ side by side. */
export function ReferenceTables({ rows }: { rows: readonly ReferenceTablesFragment[] }) {
  if (rows.length === 0) return null;
  return (
    <section className={reading["section"]}>
      <h2>
        Measured and counted <span>· {rows.length}</span>
      </h2>
      <p className={styles["what"]}>Values to compare with. An examination draws nothing from them.</p>
      {groupRows(rows).map((group) =>
        group.quantities.length > MOST_AT_ONCE ? (
          <Disclosure key={group.name} summary={`${group.name}, ${group.quantities.length} rows`}>
            <Table group={group} />
          </Disclosure>
        ) : (
          <Table key={group.name} group={group} />
        ),
      )}
    </section>
  );
}

const Table = ({ group }: { group: TableGroup<ReferenceTablesFragment> }) => (
  <table className={styles["table"]}>
    <caption>{group.name}</caption>
    <thead>
      <tr>
        <th scope="col">What</th>
        <th scope="col">How much, and who says so</th>
      </tr>
    </thead>
    <tbody>
      {group.quantities.map((quantity) => (
        <Quantity key={quantity.rows[0]?.id} quantity={quantity} />
      ))}
    </tbody>
  </table>
);

function Quantity({ quantity: { quantity, rows } }: { quantity: RowGroup<ReferenceTablesFragment> }) {
  const differ = new Set(rows.map(sayMeasured)).size > 1;
  return (
    <tr>
      <th scope="row">
        {quantity}
        {differ ? <span className={styles["differ"]}>{rows.length} values, which differ</span> : null}
      </th>
      <td>
        <ul className={styles["values"]}>
          {rows.map((row) => (
            <li key={row.id}>
              <Value row={row} />
            </li>
          ))}
        </ul>
      </td>
    </tr>
  );
}

function Value({ row }: { row: ReferenceTablesFragment }) {
  const scope = [row.region, row.form, row.part].filter((term) => term !== null);
  return (
    <>
      <p className={row.words === null ? styles["value"] : styles["formula"]}>{sayMeasured(row)}</p>
      <p className={styles["about"]}>
        {strengthWords[row.strength]}
        {scope.map(({ id, label }) => (
          <span key={id}>
            {", "}
            <TextLink to={`/terms/${id}`}>{label}</TextLink>
          </span>
        ))}
      </p>
      {row.note ? <p className={styles["note"]}>{row.note}</p> : null}
      <ul>
        {row.citations.map((citation) => (
          <li key={`${citation.source?.id} ${citation.locator} ${citation.basis}`}>
            <CitationLine citation={citation} />
          </li>
        ))}
      </ul>
    </>
  );
}
