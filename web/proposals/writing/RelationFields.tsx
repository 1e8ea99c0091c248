import { PART_STATES } from "#server/domain/part-state.ts";
import { FIELDS_OF_RELATION, isRelation } from "#server/domain/proposals/form/claim-fields.ts";
import { listIn } from "#server/domain/proposals/form/form-fields.ts";
import { Checkboxes } from "#web/shared/ui/Checkboxes.tsx";
import { ChoiceField } from "./ChoiceField.tsx";
import { useFormDesk } from "./form-desk.ts";
import { NamedTermField } from "./NamedTermField.tsx";
import { PlainField } from "./PlainField.tsx";
import { ScopeFields } from "./ScopeFields.tsx";
import { TermsField } from "./TermsField.tsx";
import { WhenField } from "./WhenField.tsx";

const STATE_CHOICES = PART_STATES.map((id) => ({ id, label: id }));

/** What a claim of the chosen kind still has to say, in the order of its sentence. */
export function RelationFields() {
  const { fields, put, refusalAt } = useFormDesk();
  const relation = fields["relation"];
  if (!isRelation(relation)) return null;
  const wanted: readonly string[] = FIELDS_OF_RELATION[relation];
  const has = (name: string) => wanted.includes(name);
  return (
    <>
      {has("ways") ? (
        <>
          <TermsField
            of="ways"
            label={listIn(fields, "ways").length > 0 ? "or made with" : "It is made with"}
            placeholder="circular saw, hand plane …"
          />
          <ChoiceField
            of="closed"
            label="Are these all the ways?"
            otherwise="yes"
            choices={[
              { id: "yes", label: "Yes, it can come of nothing else" },
              { id: "no", label: "No, there are others", beside: "then it bounds nothing" },
            ]}
          />
        </>
      ) : null}
      {has("object") ? (
        <NamedTermField of="object" label="It is usual for" placeholder="a style, a form, a region" />
      ) : null}
      {has("regions") ? <TermsField of="regions" label="Made only in" placeholder="a region" /> : null}
      {has("states") ? (
        <Checkboxes
          label="It speaks for"
          choices={STATE_CHOICES}
          value={listIn(fields, "states")}
          onChange={(states) => put({ states: states.join(" | ") })}
          refusal={refusalAt("states")}
        />
      ) : null}
      {has("from") ? (
        <>
          <NamedTermField of="from" label="From" placeholder="a region" />
          <NamedTermField of="to" label="To" placeholder="a region" />
          <PlainField of="years" label="In how many years" placeholder="5-10" />
        </>
      ) : null}
      {has("condition") ? (
        <>
          <NamedTermField
            of="condition"
            label="It says nothing where one sees"
            placeholder="a feature, a finish"
          />
          <ChoiceField
            of="anywhere"
            label="Seen where?"
            otherwise="no"
            choices={[
              { id: "no", label: "On the same part" },
              { id: "yes", label: "Anywhere on the piece" },
            ]}
          />
        </>
      ) : null}
      {has("when") ? <WhenField relation={relation} /> : null}
      {has("region") ? <ScopeFields /> : null}
    </>
  );
}
