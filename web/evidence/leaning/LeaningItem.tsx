import type { LeaningRole } from "../../shared/apollo/schema-types.graphql.ts";
import { TextLink } from "../../shared/ui/TextLink.tsx";
import type { LeaningQuery } from "./Leaning.graphql.ts";
import styles from "./LeansOn.module.css";

type Leaning = NonNullable<LeaningQuery["claim"]>["leaning"]["examinations"][number];

const ROLES: Readonly<Record<LeaningRole, { readonly sign: string; readonly name: string }>> = {
  CONTRADICTION: { sign: "✕", name: "contradiction" },
  UNUSUAL: { sign: "∕", name: "out of its time" },
  AGREEMENT: { sign: "●", name: "agreement" },
  SILENCE: { sign: "○", name: "silence" },
  RULE_OUT: { sign: "✕", name: "rule-out" },
  SIGN: { sign: "◇", name: "sign" },
};

/** One examination: each thing in it that leans on the claim, as it stands and as it would without. */
export const LeaningItem = ({ leaning }: { leaning: Leaning }) => {
  const { examination, headline, headlineWithout, lines } = leaning;
  const page = `/pieces/${examination.id}`;
  return (
    <li className={styles["piece"]}>
      <h3>
        <TextLink to={page}>{examination.piece.title}</TextLink>
        {examination.piece.invented ? <span> · invented piece</span> : null}
      </h3>
      <ul className={styles["lines"]}>
        {lines.map(({ strip, role, says, now, without }) => (
          <li key={`${role} ${strip} ${says}`} className={styles["line"]}>
            <p>
              <span className={styles["role"]} data-role={role}>
                <i aria-hidden="true">{ROLES[role].sign}</i> {ROLES[role].name}
              </span>{" "}
              <TextLink to={`${page}#strip-${strip}`}>{says}</TextLink>
            </p>
            <dl>
              <div>
                <dt>as it stands</dt>
                <dd>{now}</dd>
              </div>
              <div>
                <dt>without this claim</dt>
                <dd>{without ?? "the same: something else holds it up too"}</dd>
              </div>
            </dl>
          </li>
        ))}
      </ul>
      {headlineWithout === null ? (
        <p className={styles["conclusion"]}>The conclusion on the piece would read the same.</p>
      ) : (
        <dl className={styles["conclusion"]}>
          <div>
            <dt>The conclusion reads</dt>
            <dd>{headline}</dd>
          </div>
          <div>
            <dt>Without this claim it would read</dt>
            <dd>{headlineWithout}</dd>
          </div>
        </dl>
      )}
    </li>
  );
};
