import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import type { ProposalFieldsFragment } from "./ProposalPage.graphql.ts";
import styles from "./SidesOfEdit.module.css";

type Edit = ProposalFieldsFragment["edits"][number];

const PAGES: Readonly<Record<string, string>> = { claim: "/claims/", term: "/terms/", source: "/sources/" };
const DOES: Readonly<Record<Edit["does"], string>> = {
  ADDED: "New",
  CHANGED: "Changed",
  WITHDRAWN: "Taken out",
};

type Row = Edit["rows"][number];

/** One edit as a table of two readings, field by field: what differs is in sight, what stays is folded up below it. What is new, or taken out, has one reading. */
export function SidesOfEdit({ edit, isOver }: { edit: Edit; isOver: boolean }) {
  const differing = edit.rows.filter(({ differs }) => differs);
  const staying = edit.rows.filter(({ differs }) => !differs);
  const sides = isOver
    ? (["As it was", "As it asked for"] as const)
    : (["As it is", "As it would be"] as const);
  if (edit.before === null || edit.after === null)
    return (
      <section className={styles["edit"]} aria-label={`${DOES[edit.does]}: ${edit.after ?? edit.before}`}>
        <Heading edit={edit} />
        <OneSide
          rows={differing}
          side={sides[edit.before === null ? 1 : 0]}
          of={edit.before === null ? "after" : "before"}
        />
      </section>
    );
  return (
    <section className={styles["edit"]} aria-label={`${DOES[edit.does]}: ${edit.after}`}>
      <Heading edit={edit} />
      {edit.before !== edit.after ? (
        <p className={styles["would"]}>
          {sides[1]}: {edit.after}
        </p>
      ) : null}
      {differing.length > 0 ? <Sides rows={differing} sides={sides} /> : null}
      {staying.length > 0 ? (
        <Disclosure level={4} summary={`What stays as it is · ${staying.length}`}>
          <Sides rows={staying} sides={sides} />
        </Disclosure>
      ) : null}
    </section>
  );
}

const Heading = ({ edit }: { edit: Edit }) => (
  <h3>
    {DOES[edit.does]} {edit.kind}:{" "}
    {edit.before === null ? (
      edit.after
    ) : (
      <TextLink to={`${PAGES[edit.kind]}${edit.of}`}>{edit.before}</TextLink>
    )}
  </h3>
);

const OneSide = ({ rows, side, of }: { rows: readonly Row[]; side: string; of: "before" | "after" }) => (
  <table className={styles["sides"]}>
    <thead>
      <tr>
        <th scope="col">
          <span className="visually-hidden">Field</span>
        </th>
        <th scope="col">{side}</th>
      </tr>
    </thead>
    <tbody>
      {rows.map((row) => (
        <tr key={`${row.what} ${row[of]}`}>
          <th scope="row">{row.what}</th>
          <td>{row[of]}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

const Sides = ({ rows, sides: [was, is] }: { rows: readonly Row[]; sides: readonly [string, string] }) => (
  <table className={styles["sides"]}>
    <thead>
      <tr>
        <th scope="col">
          <span className="visually-hidden">Field</span>
        </th>
        <th scope="col">{was}</th>
        <th scope="col">{is}</th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ what, before, after, differs }) => (
        <tr key={`${what} ${before} ${after}`} data-differs={differs}>
          <th scope="row">{what}</th>
          <td data-side={was}>{before ?? <span className={styles["none"]}>not there</span>}</td>
          <td data-side={is}>
            {after === null ? (
              <span className={styles["none"]}>{differs ? "dropped" : "not there"}</span>
            ) : differs ? (
              <strong>{after}</strong>
            ) : (
              after
            )}
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
