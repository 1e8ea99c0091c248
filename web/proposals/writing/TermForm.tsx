import { TERM_KINDS } from "#server/domain/term.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { termKindWords } from "#web/shared/words/term-words.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { PlainField } from "./PlainField.tsx";
import { TermsField } from "./TermsField.tsx";

const kindOf = (kind: string): TermKind => kind.toUpperCase() as TermKind;
const KINDS = TERM_KINDS.map((id) => ({
  id,
  label: termKindWords[kindOf(id)].one,
  beside: termKindWords[kindOf(id)].what,
}));

/** A term: what the trade calls it, what it is, and under what it comes. */
export function TermForm({ isNew }: { isNew: boolean }) {
  const { fields } = useFormDesk();
  return (
    <>
      <h2>What is it called?</h2>
      {isNew ? <ChoiceField of="kind" label="What it is" choices={KINDS} look="folded" /> : null}
      <TermWords />
      {fields["kind"] ? (
        <>
          <h2>Where does it belong?</h2>
          <TermPlace />
        </>
      ) : null}
    </>
  );
}

/** What a term is called, and what it is. */
export const TermWords = () => (
  <>
    <PlainField of="label" label="Name in the trade" hint="A general name; no person, firm or brand." />
    <PlainField of="other-labels" label="Other names" placeholder="with | between them" />
    <PlainField of="note" label="What it is, in plain sentences" lines={3} />
  </>
);

/** Under what a term comes, and on what it is looked for. */
export function TermPlace() {
  const kind = useFormDesk().fields["kind"] ?? "";
  return (
    <>
      <NamedTermField
        of="broader"
        label="It is a kind of, or lies within"
        kinds={[kindOf(kind)]}
        placeholder="a broader term"
      />
      {kind === "feature" || kind === "form" ? (
        <TermsField
          of="parts"
          label={kind === "form" ? "Parts it has" : "Looked for on"}
          kinds={["PART"]}
          placeholder="a kind of part"
        />
      ) : null}
    </>
  );
}
