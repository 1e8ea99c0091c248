import type { Change, Edit } from "../../domain/change.ts";
import { LONGEST_TEXT, LONGEST_TITLE } from "../../domain/proposals/check-words.ts";
import type { ProposalKind } from "../../domain/proposals/proposal.ts";
import type { MergeGroup } from "../../domain/sharing/plan-merge.ts";
import type { SharedChanges } from "../../domain/sharing/shared-changes.ts";
import { type FindNamed, sayEdit } from "../ask/say-edit.ts";
import type { Asked } from "../do/make-proposal.ts";

/** The proposal of what another house accepted, which keeps where it came from. */
export async function proposalOfGroup(
  { named }: { readonly named: FindNamed },
  { house }: SharedChanges,
  { change, shared, changedOnBothSides }: MergeGroup,
  alike: readonly string[],
  base: number,
): Promise<Asked> {
  const main = change.find(({ kind }) => kind === "claim") ?? (change[0] as Edit);
  const { says } = await sayEdit(withAdded(named, change), main, { before: base, after: base });
  const more = change.length === 1 ? "" : ` (and ${change.length - 1} more that it needs)`;
  const last = Math.max(...shared.map(({ revision }) => revision));
  const messages = [...new Set(shared.map(({ message }) => message).filter((text) => text.trim() !== ""))];
  const why = [
    `Another house accepted this: ${messages.length === 0 ? "it did not say why" : messages.map((text) => `“${text}”`).join(", ")}.`,
    ...(changedOnBothSides.length === 0
      ? []
      : [`Both houses changed ${changedOnBothSides.join(", ")}: look at what stands here first.`]),
    ...(alike.length === 0 ? [] : [`It may stand here already, as ${[...new Set(alike)].join(", ")}.`]),
  ].join(" ");
  return {
    ...{ kind: kindOf(main), title: cut(`${says.replace(/\.$/, "")}${more}`, LONGEST_TITLE) },
    ...{ why: cut(why, LONGEST_TEXT), change, base, state: "open" },
    origin: `${house} revision ${last}`,
  };
}

function kindOf({ kind, before, after }: Edit): ProposalKind {
  if (after === undefined) return "retirement";
  if (before !== undefined) return "correction";
  return kind === "claim" && (after as { readonly relation?: string }).relation === "void when"
    ? "exception"
    : kind;
}

const cut = (text: string, most: number): string => {
  const signs = [...text];
  return signs.length <= most ? text : `${signs.slice(0, most - 1).join("")}…`;
};

/** What is named, with what the change itself adds. */
const withAdded = (named: FindNamed, change: Change): FindNamed => ({
  terms: async (ids, at) => [
    ...(await named.terms(ids, at)),
    ...change.flatMap((edit) => (edit.kind === "term" && edit.after && !edit.before ? [edit.after] : [])),
  ],
  sources: async (ids, at) => [
    ...(await named.sources(ids, at)),
    ...change.flatMap((edit) => (edit.kind === "source" && edit.after && !edit.before ? [edit.after] : [])),
  ],
});
