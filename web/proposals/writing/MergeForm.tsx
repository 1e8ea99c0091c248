import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { KINDS_OF_FIELD } from "./relation-choices.ts";
import styles from "./writing.module.css";

const ALL: readonly TermKind[] = [...(KINDS_OF_FIELD["object"] ?? []), "PART"];

/** Two terms that are one thing: which goes, and which stands for both. */
export function MergeForm() {
  const { fields } = useFormDesk();
  const kind = fields["about"]?.split(".")[0]?.toUpperCase() as TermKind | undefined;
  return (
    <>
      <h2>Which two are one?</h2>
      <NamedTermField of="about" label="This one goes" kinds={ALL} placeholder="the name that is used less" />
      <NamedTermField
        of="into"
        label="This one stands for both"
        kinds={kind ? [kind] : ALL}
        placeholder="a term of the same kind"
      />
      <p className={styles["beside"]}>
        What is said of the first is said of the second from then on, and its names become other names of it.
        The first keeps its page and its place in pieces that were examined; nothing is lost.
      </p>
    </>
  );
}
