import type { TermId } from "#server/domain/ids.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { TermField } from "#web/shared/terms/TermField.tsx";
import styles from "./Claimed.module.css";
import { DateField } from "./DateField.tsx";
import { useDeeds, useDesk } from "./desk.ts";
import { changeAttribution } from "./edit-piece.ts";
import { problemAt } from "./problem-at.ts";

const FIELDS = [
  { of: "region", label: "Region", kind: "REGION", example: "a country, colony or town" },
  { of: "form", label: "Form", kind: "FORM", example: "chest of drawers, side chair" },
  { of: "style", label: "Style", kind: "STYLE", example: "late baroque, rococo" },
  { of: "maker", label: "Maker", kind: "MAKER", example: "a workshop" },
] as const satisfies readonly { of: string; label: string; kind: TermKind; example: string }[];

/** The fields of the attribution: a date and four terms. Each is stored as soon as it is chosen. */
export function AttributionFields() {
  const { piece, problems } = useDesk();
  const { edit, glossary, learn } = useDeeds();
  return (
    <div className={styles["fields"]}>
      <DateField />
      {FIELDS.map(({ of, label, kind, example }) => (
        <TermField
          key={of}
          label={label}
          kinds={[kind]}
          value={piece.attribution[of]}
          labelOf={glossary.labelOf}
          placeholder={example}
          refusal={problemAt(problems, `attribution.${of}`)?.message}
          onChange={(term: TermId | undefined, name) => {
            if (term !== undefined) learn(term, name);
            edit(changeAttribution({ [of]: term }));
          }}
        />
      ))}
    </div>
  );
}
