import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import type { Wrong } from "./asked-in-form.ts";

interface Line {
  readonly before: string | null;
  readonly after: string | null;
}

const BEFORE: Readonly<Partial<Record<Wrong, string>>> = {
  date: "Another date",
  place: "Another place",
  strength: "To be leaned on otherwise",
  sources: "Other sources",
  restore: "Restore",
  retract: "Retract",
  retire: "Retire",
};

/** What a proposal is called where its maker says nothing: what its form says, after what was wrong. At most 200 characters. */
export function titleOfForm(kind: ProposalKind, wrong: Wrong | undefined, edits: readonly Line[]): string {
  const edit = edits.at(kind === "MERGE" ? 0 : -1);
  if (edit === undefined) return "";
  const says = edit.after ?? edit.before ?? "";
  const isRenamed = wrong === "words" && edit.before !== null && edit.after !== null && edit.before !== says;
  const head = wrong === undefined ? undefined : BEFORE[wrong];
  const title = isRenamed
    ? `${edit.before}, to be called ${says}`
    : head === undefined || kind === "EXCEPTION"
      ? says
      : `${head}: ${kind === "RETIREMENT" ? (edit.before ?? says) : says}`;
  return [...title].slice(0, 200).join("");
}
