import { useState } from "react";
import { id } from "#server/domain/ids.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { TermField } from "#web/shared/terms/TermField.tsx";
import { useTermName } from "../use-term-name.ts";
import { useFormDesk } from "./form-desk.ts";
import { KINDS_OF_FIELD } from "./relation-choices.ts";

interface Props {
  /** The field of the form. */
  of: string;
  label: string;
  placeholder?: string;
  kinds?: readonly TermKind[];
}

/** A field that holds one term; the page says its name, the form keeps its id. */
export function NamedTermField({ of, label, placeholder = "", kinds }: Props) {
  const { fields, put, refusalAt } = useFormDesk();
  const value = fields[of]?.trim() || undefined;
  /** What was chosen here is called at once what it was chosen by: a name that comes later would open the list again. */
  const [chosen, setChosen] = useState<{ readonly id: string; readonly label: string }>();
  const asked = useTermName(chosen?.id === value ? undefined : value);
  const name = chosen?.id === value ? (chosen?.label ?? "") : asked;
  return (
    <TermField
      label={label}
      kinds={kinds ?? KINDS_OF_FIELD[of] ?? []}
      value={value === undefined ? undefined : id<"term">(value)}
      labelOf={() => name}
      placeholder={placeholder}
      refusal={refusalAt(of)}
      onChange={(term, label) => {
        setChosen(term === undefined ? undefined : { id: term, label });
        put({ [of]: term ?? "" });
      }}
    />
  );
}
