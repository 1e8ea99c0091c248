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

/** One edit as a table of two readings, field by field: what differs first and marked, what stays below it. */
export function SidesOfEdit({ edit, isOver }: { edit: Edit; isOver: boolean }) {
  const rows = [...edit.rows].sort((a, b) => Number(b.differs) - Number(a.differs));
  const [was, is] = isOver ? ["As it was", "As it asked for"] : ["As it is", "As it would be"];
  return (
    <section className={styles["edit"]} aria-label={`${DOES[edit.does]}: ${edit.after ?? edit.before}`}>
      <h3>
        {DOES[edit.does]} {edit.kind}:{" "}
        {edit.before === null ? (
          edit.after
        ) : (
          <TextLink to={`${PAGES[edit.kind]}${edit.of}`}>{edit.before}</TextLink>
        )}
      </h3>
      {edit.before !== null && edit.after !== null && edit.before !== edit.after ? (
        <p className={styles["would"]}>
          {is}: {edit.after}
        </p>
      ) : null}
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
    </section>
  );
}
