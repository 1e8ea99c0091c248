import { isRelation } from "#server/domain/proposals/form/claim-fields.ts";
import { usualHardness } from "#server/domain/proposals/form/claim-of-fields.ts";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { ChoiceField } from "./ChoiceField.tsx";
import { CitationsFields } from "./CitationsFields.tsx";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { PlainField } from "./PlainField.tsx";
import { RelationFields } from "./RelationFields.tsx";
import { RELATION_CHOICES } from "./relation-choices.ts";
import { StandingClaims } from "./StandingClaims.tsx";
import { StrengthField } from "./StrengthField.tsx";

const HARDNESSES = [
  { id: "physical", label: "It could not be", beside: "the thing did not exist" },
  { id: "practice", label: "It was not done", beside: "habit or fashion" },
];

/** A claim, asked as its sentence goes: of what, what, when and where, and how one knows. */
export function ClaimForm() {
  const { fields } = useFormDesk();
  const relation = fields["relation"];
  return (
    <>
      <h2>What is it about?</h2>
      <NamedTermField of="subject" label="Subject" placeholder="saw mark, drawer joint, veneer …" />
      <StandingClaims subject={fields["subject"]} />
      <h2>What do you know of it?</h2>
      <ChoiceField of="relation" label="I can say" choices={RELATION_CHOICES} look="folded" />
      <RelationFields />
      <h2>How do you know?</h2>
      <CitationsFields />
      <Disclosure summary="How far it can be leaned on, remarks">
        <StrengthField label="How sure is it? Left open, it follows from how you know it." />
        {isRelation(relation) &&
        relation !== "typical of" &&
        relation !== "spread to" &&
        relation !== "indicates" ? (
          <ChoiceField
            of="hardness"
            label="Before or after that"
            choices={HARDNESSES}
            otherwise={usualHardness(relation)}
          />
        ) : null}
        <PlainField of="note" label="Remark for readers" lines={2} />
      </Disclosure>
    </>
  );
}
