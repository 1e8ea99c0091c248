import { skipToken, useSuspenseQuery } from "@apollo/client/react";
import type { Change } from "#server/domain/change.ts";
import { fieldsOfClaim } from "#server/domain/proposals/form/fields-of-claim.ts";
import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import { fieldsOfSource } from "#server/domain/proposals/form/source-of-fields.ts";
import { fieldsOfTerm } from "#server/domain/proposals/form/term-of-fields.ts";
import type { WritingKind } from "./kinds.ts";
import { ToBeCorrectedDocument } from "./Writing.graphql.ts";
import { Writing } from "./Writing.tsx";

interface Props {
  kind: WritingKind;
  /** What the address says already. */
  start: FormFields;
  onBegun: (id: string) => void;
}

/** A new form; of a correction, with what stands in its fields. */
export function WritingFromStanding({ kind, start, onBegun }: Props) {
  const about = kind.id === "correction" ? start["about"] : undefined;
  const { data } = useSuspenseQuery(
    ToBeCorrectedDocument,
    about === undefined ? skipToken : { variables: { id: about } },
  );
  const fields = { ...fieldsOf(data?.standing ?? []), ...start };
  return <Writing kind={kind} begun={undefined} start={{ fields, title: "", why: "" }} onBegun={onBegun} />;
}

function fieldsOf([edit]: Change): FormFields {
  if (edit?.before === undefined) return {};
  if (edit.kind === "claim") return fieldsOfClaim(edit.before);
  return edit.kind === "term" ? fieldsOfTerm(edit.before) : fieldsOfSource(edit.before);
}
