import type { Edit } from "../../domain/change.ts";
import type { EditInWords, EditKind } from "../../domain/edit-words.ts";
import { idOfEdit } from "../../domain/graph-view.ts";
import { netChange } from "../../domain/net-change.ts";
import { isProblem } from "../../domain/problem.ts";
import type { RevisionNumber } from "../../domain/revision.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import { type FindNamed, sayEdit } from "../ask/say-edit.ts";
import type { Refusal } from "../refusal.ts";
import { standingRevision } from "../standing-revision.ts";
import { changesBetween } from "./changes-between.ts";

/** Edits told at once. */
const AT_ONCE = 50;

/** One thing that is another, in words. */
export interface SaidEdit extends EditInWords {
  readonly id: string;
  readonly kind: Edit["kind"];
}

/** Things of one kind to which the same was done. */
export interface EditGroup {
  readonly kind: Edit["kind"];
  readonly does: EditKind;
  readonly count: number;
}

export interface ComparedRevisions {
  readonly from: RevisionNumber;
  readonly to: RevisionNumber;
  /** All of them, in the order in which their edits follow. */
  readonly groups: readonly EditGroup[];
  readonly edits: readonly SaidEdit[];
  /** How many edits come before and after these. */
  readonly before: number;
  readonly after: number;
}

const DOES: readonly EditKind[] = ["added", "changed", "withdrawn"];

/** What an edit does to its thing. */
export const doneBy = ({ before, after }: Edit): EditKind => {
  if (before === undefined) return "added";
  return after === undefined ? "withdrawn" : "changed";
};

/**
 * What the later of two revisions says otherwise than the earlier, thing by thing whatever lay between, in groups; from the edit
 * number `skip` on, some at a time.
 */
export async function compareRevisions(
  ports: Acting & { readonly store: Store; readonly named: FindNamed },
  asked: { readonly from: number; readonly to: number; readonly skip: number },
): Promise<ComparedRevisions | Refusal> {
  const refusal = refuseCaller(ports, "read the graph");
  if (refusal) return refusal;
  for (const number of [asked.from, asked.to]) {
    const standing = await standingRevision(ports, number);
    if (isProblem(standing)) return { refused: [standing] };
  }
  const [from, to] = [Math.min(asked.from, asked.to), Math.max(asked.from, asked.to)];
  const changes = await changesBetween(ports, from, to);
  if (isProblem(changes)) return { refused: [changes] };
  const net = netChange(changes);
  const groups = groupsOf(net);
  const inOrder = groups.flatMap(({ kind, does }) =>
    net.filter((edit) => edit.kind === kind && doneBy(edit) === does),
  );
  const skip = Math.max(0, asked.skip);
  const edits = await Promise.all(
    inOrder.slice(skip, skip + AT_ONCE).map(async (edit) => ({
      ...{ id: idOfEdit(edit), kind: edit.kind },
      ...(await sayEdit(ports.named, edit, { before: from, after: to })),
    })),
  );
  return {
    ...{ from, to, groups, edits, before: Math.min(skip, inOrder.length) },
    after: Math.max(0, inOrder.length - skip - edits.length),
  };
}

function groupsOf(edits: readonly Edit[]): readonly EditGroup[] {
  const kinds = [...new Set(edits.map(({ kind }) => kind))];
  return kinds
    .flatMap((kind) =>
      DOES.map((does) => ({
        ...{ kind, does },
        count: edits.filter((edit) => edit.kind === kind && doneBy(edit) === does).length,
      })),
    )
    .filter(({ count }) => count > 0);
}
