import { useQuery } from "@apollo/client/react";
import { id } from "#server/domain/ids.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { TermField } from "#web/shared/terms/TermField.tsx";
import { useFormDesk } from "./form-desk.ts";
import { KINDS_OF_FIELD } from "./relation-choices.ts";
import { TermByNameDocument } from "./Writing.graphql.ts";

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
  const name = useTermName(value);
  return (
    <TermField
      label={label}
      kinds={kinds ?? KINDS_OF_FIELD[of] ?? []}
      value={value === undefined ? undefined : id<"term">(value)}
      labelOf={() => name}
      placeholder={placeholder}
      refusal={refusalAt(of)}
      onChange={(term) => put({ [of]: term ?? "" })}
    />
  );
}

/** The name of a term by its id; the id while it is not known. */
export function useTermName(term: string | undefined): string {
  const { data } = useQuery(TermByNameDocument, { variables: { id: term ?? "" }, skip: term === undefined });
  return term === undefined ? "" : (data?.term?.label ?? term);
}
