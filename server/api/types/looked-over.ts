import { readFormFields } from "../../domain/proposals/form/form-fields.ts";
import { readCsv } from "../../formats/read-csv.ts";
import { type BatchRow, MOST_ROWS, type ReadBatch, readBatch } from "../../use-cases/ask/batch/read-batch.ts";
import { type LookedOver, lookOver } from "../../use-cases/ask/look-over/look-over.ts";
import type { FoundAlike } from "../../use-cases/ask/look-over/say-alike.ts";
import type { Builder } from "../builder.ts";
import { findNamed } from "../find-named.ts";
import type { ProposedEditRef } from "./proposal.ts";

/** Cost of putting a form in words and looking for what is the same. */
const LOOK_OVER_WEIGHT = 30;
/** Cost of the same for a table of as many rows as can be. */
const BATCH_WEIGHT = 2000;
const ALIKE_TOLD = 8;
const EDITS_TOLD = 20;

/** What is written before it is proposed, read back. */
export function addLookedOver(b: Builder, edit: ProposedEditRef) {
  const alike = b.objectRef<FoundAlike>("Alike").implement({
    description: "Something of the newest revision that may be what is proposed.",
    fields: (t) => ({
      of: t.id({ description: "Id of the term, claim or source.", resolve: ({ id }) => id }),
      kind: t.exposeString("kind", { description: "term, claim or source." }),
      by: t.expose("by", { type: b.enums.alikeBy }),
      says: t.exposeString("says"),
    }),
  });
  const looked = b.objectRef<LookedOver>("LookedOver").implement({
    fields: (t) => ({
      change: t.field({
        description: "What would be proposed; null while something is lacking or wrong.",
        type: "Change",
        nullable: true,
        resolve: ({ change }) => change,
      }),
      edits: t.field({ type: [edit], extensions: { entries: EDITS_TOLD }, resolve: ({ edits }) => edits }),
      problems: t.field({
        description: "What is lacking or wrong; each path is a field of the form, or a place in the change.",
        type: ["Problem"],
        resolve: ({ problems }) => problems,
      }),
      alike: t.field({ type: [alike], extensions: { entries: ALIKE_TOLD }, resolve: (one) => one.alike }),
    }),
  });
  const row = b.objectRef<BatchRow>("BatchRow").implement({
    fields: (t) => ({
      row: t.exposeInt("row", { description: "Number of the record; the head is 1." }),
      says: t.stringList({ description: "What it would bring, as lines.", resolve: ({ says }) => says }),
      problems: t.field({
        description: "Each path begins with row and column.",
        type: ["Problem"],
        extensions: { entries: 2 },
        resolve: ({ problems }) => problems,
      }),
      alike: t.field({ type: [alike], extensions: { entries: 2 }, resolve: (one) => one.alike }),
    }),
  });
  const batch = b.objectRef<ReadBatch>("ReadBatch").implement({
    description: "A table of claims as it would be proposed: all of it, or nothing.",
    fields: (t) => ({
      change: t.field({
        description: "Null while anything is wrong.",
        type: "Change",
        nullable: true,
        resolve: ({ change }) => change,
      }),
      rows: t.field({ type: [row], extensions: { entries: MOST_ROWS }, resolve: ({ rows }) => rows }),
      problems: t.field({
        description: "What is wrong with the table as a whole.",
        type: ["Problem"],
        resolve: ({ problems }) => problems,
      }),
    }),
  });
  b.queryFields((t) => ({
    lookOver: t.field({
      description:
        "Reads a form back on the newest revision: in words, with what it lacks and what stands already. Keeps nothing.",
      type: looked,
      extensions: { weight: LOOK_OVER_WEIGHT },
      args: {
        kind: t.arg({ type: b.enums.proposalKind, required: true }),
        form: t.arg({ type: "FormFields", required: true }),
      },
      resolve: (_, { kind, form }, context) =>
        lookOver(context, kind, readFormFields(form), findNamed(context)),
    }),
    readBatch: t.field({
      description:
        "Reads a table of claims, comma-separated values as in docs/formats/claims-csv.md. Keeps nothing.",
      type: batch,
      extensions: { weight: BATCH_WEIGHT },
      args: { text: t.arg.string({ required: true }) },
      resolve: (_, { text }, context) => readBatch(context, readCsv(text), findNamed(context)),
    }),
  }));
}
