import type { FormFields } from "#server/domain/proposals/form/form-fields.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { OF_EXCEPTION } from "./form-desk.ts";
import { WRITING_KINDS, type WritingKind } from "./kinds.ts";

/** What can be wrong with something that stands. */
export const WRONGS = [
  ...(["date", "place", "strength", "sources", "exception", "retract", "restore"] as const),
  ...(["words", "belongs", "merge", "retire", "all"] as const),
] as const;
export type Wrong = (typeof WRONGS)[number];

/** What somebody said is wrong, where that was said. */
export const wrongIn = (fields: FormFields): Wrong | undefined =>
  WRONGS.find((one) => one === fields["wrong"]?.trim());

const KIND_OF_WRONG: Readonly<Partial<Record<Wrong, ProposalKind>>> = {
  exception: "EXCEPTION",
  retract: "RETIREMENT",
  retire: "RETIREMENT",
  merge: "MERGE",
};

/** The kind of proposal that a form makes: a correction may end as an exception, a retirement or a merge. */
export function askedIn(kind: WritingKind, fields: FormFields): ProposalKind {
  const wrong = kind.id === "correction" ? wrongIn(fields) : undefined;
  return (wrong === undefined ? undefined : KIND_OF_WRONG[wrong]) ?? kind.kind;
}

/** A draft of any kind as it stands in the forms: an exception or a retirement is a correction of what it is about. */
export function resumed(
  kind: ProposalKind,
  form: FormFields,
): { readonly kind: WritingKind; readonly fields: FormFields } {
  const correction = WRITING_KINDS.find(({ id }) => id === "correction") ?? WRITING_KINDS[0];
  if (form["wrong"] !== undefined && form["about"] !== undefined) return { kind: correction, fields: form };
  if (kind === "RETIREMENT") {
    const isClaim = form["about"]?.startsWith("claim.");
    return { kind: correction, fields: { ...form, wrong: isClaim ? "retract" : "retire" } };
  }
  if (kind === "EXCEPTION") {
    const { of = "", ...rest } = form;
    const own = Object.entries(rest).map(([name, text]) => [`${OF_EXCEPTION}${name}`, text]);
    return { kind: correction, fields: { about: of, wrong: "exception", ...Object.fromEntries(own) } };
  }
  return { kind: WRITING_KINDS.find((one) => one.kind === kind) ?? WRITING_KINDS[0], fields: form };
}
