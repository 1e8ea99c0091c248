import type { Edit } from "#server/domain/change.ts";
import { ClaimForm } from "./ClaimForm.tsx";
import { CorrectionForm } from "./CorrectionForm.tsx";
import type { WritingKind } from "./kinds.ts";
import { MergeForm } from "./MergeForm.tsx";
import { SourceFields } from "./SourceFields.tsx";
import { TermForm } from "./TermForm.tsx";

/** The fields of what is proposed. */
export function FormOfKind({ kind, standing }: { kind: WritingKind; standing: Edit | undefined }) {
  switch (kind.id) {
    case "claim":
      return <ClaimForm />;
    case "term":
      return <TermForm isNew />;
    case "source":
      return (
        <>
          <h2>What is it?</h2>
          <SourceFields />
        </>
      );
    case "merge":
      return <MergeForm />;
    default:
      return standing === undefined ? null : <CorrectionForm standing={standing} />;
  }
}
