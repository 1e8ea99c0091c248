import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { BasisFields } from "./BasisFields.tsx";
import { ClaimForm } from "./ClaimForm.tsx";
import { useFormDesk } from "./form-desk.ts";
import type { WritingKind } from "./kinds.ts";
import { MergeForm } from "./MergeForm.tsx";
import { PlainField } from "./PlainField.tsx";
import { RelationFields } from "./RelationFields.tsx";
import { SourceFields } from "./SourceFields.tsx";
import { TermForm } from "./TermForm.tsx";

const WAY: Readonly<Record<string, string>> = {
  correction: "choose “Write it anew” there",
  exception: "choose “Propose a correction” there",
  retirement: "choose “Propose a correction” there",
};

/** The fields of what is proposed. */
export function FormOfKind({ kind }: { kind: WritingKind }) {
  const { fields } = useFormDesk();
  const about = fields[kind.id === "exception" ? "of" : "about"]?.trim();
  switch (kind.id) {
    case "claim":
      return <ClaimForm />;
    case "term":
      return <TermForm isNew />;
    case "source":
      return <SourceForm />;
    case "merge":
      return <MergeForm />;
    default:
      if (!about)
        return (
          <p>
            Open the claim, term or source in <TextLink to="/evidence">the evidence</TextLink>, and{" "}
            {WAY[kind.id]}.
          </p>
        );
      return (
        <>
          <p>
            About <TextLink to={pageOf(about)}>{about}</TextLink>
          </p>
          {kind.id === "exception" ? <ExceptionForm /> : null}
          {kind.id === "retirement" ? (
            <PlainField
              of="reason"
              label="Why it should not stand any more"
              hint="A claim stays to be read with this reason, and counts for nothing. A term or a source goes where nothing names it."
              lines={3}
            />
          ) : null}
          {kind.id === "correction" ? <CorrectionForm /> : null}
        </>
      );
  }
}

const pageOf = (id: string): string =>
  id.startsWith("claim.") ? `/claims/${id}` : id.startsWith("source.") ? `/sources/${id}` : `/terms/${id}`;

const SourceForm = () => (
  <>
    <h2>What is it?</h2>
    <SourceFields />
  </>
);

const ExceptionForm = () => (
  <>
    <h2>When does it say nothing?</h2>
    <RelationFields />
    <h2>How do you know?</h2>
    <BasisFields />
  </>
);

/** What stands, in the form it would have been written in. */
function CorrectionForm() {
  const { fields } = useFormDesk();
  if (fields["relation"] === "void when") return <ExceptionForm />;
  if (fields["relation"]) return <ClaimForm />;
  return fields["label"] === undefined ? <SourceForm /> : <TermForm isNew={false} />;
}
