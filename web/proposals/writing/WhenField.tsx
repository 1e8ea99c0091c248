import type { Relation } from "#server/domain/claim.ts";
import { datingInWords } from "#server/domain/dating-in-words.ts";
import { roleOfRelation } from "#server/domain/role-of-relation.ts";
import { DatingField } from "#web/shared/ui/DatingField.tsx";
import { useFormDesk } from "./form-desk.ts";

/** When something was, read back as it is typed. */
export function WhenField({ relation, label = "When" }: { relation: Relation; label?: string }) {
  const { fields, put, refusalAt } = useFormDesk();
  return (
    <DatingField
      label={label}
      value={fields["when"] ?? ""}
      datingRole={roleOfRelation(relation)}
      onType={(when) => put({ when })}
      say={datingInWords}
      mayBeEmpty
      hint="c. 1770, 1760s, after 1830: write it as you would, and take the reading that is offered."
      refusal={fields["when"] ? undefined : refusalAt("when")}
    />
  );
}
