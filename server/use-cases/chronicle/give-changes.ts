import { idOfEdit } from "../../domain/graph-view.ts";
import { netChange } from "../../domain/net-change.ts";
import { isProblem } from "../../domain/problem.ts";
import { NO_HASH, type RevisionNumber } from "../../domain/revision.ts";
import type { SharedChanges, SharedFields } from "../../domain/sharing/shared-changes.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import type { Refusal } from "../refusal.ts";
import { standingRevision } from "../standing-revision.ts";
import { changesBetween } from "./changes-between.ts";

/** What this house accepted after a revision, signed, for another house. */
export async function giveChanges(
  ports: Acting & { readonly store: Store; readonly seals: Seals },
  since: RevisionNumber,
): Promise<SharedChanges | Refusal> {
  const refusal = refuseCaller(ports, "give what was accepted to another house");
  if (refusal) return refusal;
  const { store, seals, now } = ports;
  const from = await standingRevision(ports, since);
  if (isProblem(from)) return { refused: [from] };
  const newest = (await store.newestRevision())?.number ?? 0;
  const changes = await changesBetween(ports, from, newest);
  if (isProblem(changes)) return { refused: [changes] };
  const last = new Map<string, RevisionNumber>();
  for (const [at, change] of changes.entries())
    for (const edit of change) last.set(idOfEdit(edit), from + 1 + at);
  const messages = new Map<RevisionNumber, string>();
  for (const number of new Set(last.values()))
    messages.set(number, (await store.revision(number))?.message ?? "");
  const hashAt = async (revision: RevisionNumber) => ({
    revision,
    hash: revision === 0 ? NO_HASH : ((await store.revision(revision))?.hash ?? NO_HASH),
  });
  return seals.seal<SharedFields>({
    ...{ format: "scribeline/changes", version: 1, at: now() },
    ...{ since: await hashAt(from), until: await hashAt(newest) },
    edits: netChange(changes).map((edit) => {
      const revision = last.get(idOfEdit(edit)) ?? newest;
      return { edit, revision, message: messages.get(revision) ?? "" };
    }),
  });
}
