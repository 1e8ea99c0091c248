import type { Change, Edit } from "../../domain/change.ts";
import type { EditKind, SidesInWords } from "../../domain/edit-words.ts";
import { idOfEdit } from "../../domain/graph-view.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import type { Source } from "../../domain/source.ts";
import type { Term } from "../../domain/term.ts";
import type { Store } from "../../ports/store.ts";
import { type FindNamed, saySides } from "./say-edit.ts";

/** One edit of a proposal, as it is and as it would be. */
export interface ProposedEdit extends SidesInWords {
  readonly kind: Edit["kind"];
  readonly id: string;
  readonly does: EditKind;
}

/**
 * The first edits of a proposal in words. What they name is called as it stands now, or as the change would call it; of one that was
 * decided, as it was called then.
 */
export async function sayProposal(
  { store }: { readonly store: Store },
  { change, state, base, revision }: KeptProposal,
  find: FindNamed,
  first: number,
): Promise<readonly ProposedEdit[]> {
  const isOver = state === "declined" || state === "superseded" || state === "withdrawn";
  const newest = (await store.newestRevision())?.number ?? 0;
  const now = isOver ? Math.min(base, newest) : newest;
  const at = revision === undefined ? { before: now, after: now } : { before: revision - 1, after: revision };
  return sayEdits(change, at, find, first);
}

/** The first edits of a change of the newest revision in words. */
export async function sayChange(
  { store }: { readonly store: Store },
  change: Change,
  find: FindNamed,
  first: number,
): Promise<readonly ProposedEdit[]> {
  const now = (await store.newestRevision())?.number ?? 0;
  return sayEdits(change, { before: now, after: now }, find, first);
}

function sayEdits(
  change: Change,
  at: Parameters<typeof saySides>[2],
  find: FindNamed,
  first: number,
): Promise<readonly ProposedEdit[]> {
  const names = { before: find, after: namesAfter(find, change) };
  return Promise.all(
    change.slice(0, first).map(async (edit) => ({
      ...{ kind: edit.kind, id: idOfEdit(edit), does: kindOf(edit) },
      ...(await saySides(names, edit, at)),
    })),
  );
}

const kindOf = ({ before, after }: Edit): EditKind =>
  before === undefined ? "added" : after === undefined ? "withdrawn" : "changed";

/** Names as they would be after a change. */
function namesAfter(find: FindNamed, change: Change): FindNamed {
  const terms = change.flatMap((edit): readonly Term[] =>
    edit.kind === "term" && edit.after ? [edit.after] : [],
  );
  const sources = change.flatMap((edit): readonly Source[] =>
    edit.kind === "source" && edit.after ? [edit.after] : [],
  );
  const laid = <Thing extends { readonly id: string }>(found: readonly Thing[], put: readonly Thing[]) => [
    ...new Map([...found, ...put].map((thing) => [thing.id, thing])).values(),
  ];
  return {
    terms: async (ids, at) => laid(await find.terms(ids, at), terms),
    sources: async (ids, at) => laid(await find.sources(ids, at), sources),
  };
}
