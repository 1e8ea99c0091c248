import type { RevisionNumber } from "../../domain/revision.ts";
import { findChangedSince } from "../../use-cases/ask/find-changed-since.ts";
import { readHistory } from "../../use-cases/ask/read-history.ts";
import { sayEdit } from "../../use-cases/ask/say-edit.ts";
import type { Builder } from "../builder.ts";
import type { Context } from "../context.ts";
import { findNamed } from "../find-named.ts";
import { readOn } from "../read-on.ts";
import { readPage } from "../read-page.ts";

/** An edit in words, with the names of both sides as they stood. */
const editIn = (
  context: Context,
  edit: Parameters<typeof sayEdit>[1],
  at: { readonly before: RevisionNumber; readonly after: RevisionNumber },
) => sayEdit(findNamed(context), edit, at);

/** What became of one term, claim or source. */
export function addHistory(b: Builder) {
  b.objectType("Difference", {
    description: "One thing that is not as it was, in words.",
    fields: (t) => ({
      what: t.exposeString("what", { description: "What differs: date, strength, citation." }),
      before: t.exposeString("before", { nullable: true, description: "Null where it came new." }),
      after: t.exposeString("after", { nullable: true, description: "Null where it went." }),
    }),
  });
  b.objectType("Edit", {
    description: "An edit of one term, claim or source.",
    fields: (t) => ({
      does: t.expose("does", { type: b.enums.editKind }),
      says: t.exposeString("says", {
        description: "The thing as it stood afterwards, as a line; of a withdrawn one, as it last stood.",
      }),
      differences: t.expose("differences", {
        description: "None where it was added or withdrawn.",
        type: ["Difference"],
      }),
    }),
  });
  b.objectType("HistoryEntry", {
    description: "What one revision did to one thing.",
    fields: (t) => ({
      revision: t.expose("revision", { type: "Revision" }),
      edit: t.field({
        type: "Edit",
        extensions: { weight: 5 },
        resolve: ({ revision: { number }, edit }, _, context) =>
          editIn(context, edit, { before: number - 1, after: number }),
      }),
    }),
  });
  b.queryFields((t) => ({
    history: t.field({
      description: "Every edit of a term, claim or source, newest first; a withdrawn one has a history too.",
      type: b.connections.history,
      args: { id: t.arg.id({ required: true }), ...b.pageOf(10) },
      resolve: (_, args, context) => readPage(args, (page) => readHistory(context, args.id, page)),
    }),
    changedSince: t.field({
      description:
        "How a term, claim or source of the newest revision differs from the same on an earlier one, as one edit; null if it does not.",
      type: "Edit",
      nullable: true,
      extensions: { weight: 5 },
      args: {
        id: t.arg.id({ required: true }),
        revision: t.arg.int({ required: true, description: "Number of the earlier revision." }),
      },
      resolve: async (_, args, context) => {
        await readOn(context, args.revision);
        const found = await findChangedSince(context, args.id, args.revision);
        return found ? editIn(context, found.edit, found) : null;
      },
    }),
  }));
}
