import type { Edit } from "#server/domain/change.ts";
import { isRelation } from "#server/domain/proposals/form/claim-fields.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { type Wrong, wrongIn } from "./asked-in-form.ts";
import { CitationsFields } from "./CitationsFields.tsx";
import { ClaimForm } from "./ClaimForm.tsx";
import { deskOfException, FormDeskContext, useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { RelationFields } from "./RelationFields.tsx";
import { ScopeFields } from "./ScopeFields.tsx";
import { SourceFields } from "./SourceFields.tsx";
import { StrengthField } from "./StrengthField.tsx";
import { TermForm, TermPlace, TermWords } from "./TermForm.tsx";
import { WhenField } from "./WhenField.tsx";
import styles from "./writing.module.css";
import { wrongChoices } from "./wrong-choices.ts";

/** What is wrong with something that stands, and the fields of that alone. */
export function CorrectionForm({ standing }: { standing: Edit }) {
  const { fields, put } = useFormDesk();
  const wrong = wrongIn(fields);
  return (
    <>
      <RadioGroup
        label="What is wrong with it?"
        direction="column"
        choices={wrongChoices(standing)}
        value={wrong ?? null}
        onChange={(chosen) => put({ wrong: chosen })}
      />
      {wrong === undefined ? null : <OfWrong wrong={wrong} standing={standing} />}
    </>
  );
}

function OfWrong({ wrong, standing }: { wrong: Wrong; standing: Edit }) {
  const desk = useFormDesk();
  const relation = desk.fields["relation"];
  switch (wrong) {
    case "date":
      return isRelation(relation) ? <WhenField relation={relation} label="The right date" /> : null;
    case "place":
      return <ScopeFields />;
    case "strength":
      return <StrengthField label="It is" />;
    case "sources":
      return <CitationsFields />;
    case "exception":
      return (
        <FormDeskContext value={deskOfException(desk)}>
          <RelationFields />
          <h2>How do you know?</h2>
          <CitationsFields />
        </FormDeskContext>
      );
    case "merge":
      return (
        <NamedTermField
          of="into"
          label="This one stands for both"
          kinds={[desk.fields["kind"]?.toUpperCase() as TermKind]}
          placeholder="a term of the same kind"
        />
      );
    case "words":
      return standing.kind === "source" ? <SourceFields /> : <TermWords />;
    case "belongs":
      return <TermPlace />;
    case "all":
      if (standing.kind === "source") return <SourceFields />;
      if (standing.kind === "term") return <TermForm isNew={false} />;
      return relation === "void when" ? (
        <>
          <RelationFields />
          <h2>How do you know?</h2>
          <CitationsFields />
        </>
      ) : (
        <ClaimForm />
      );
    case "retire":
      return <p className={styles["beside"]}>It goes where nothing names it any more, and keeps its page.</p>;
    default:
      return null;
  }
}
