import { examinePiece } from "../../use-cases/ask/examine-piece.ts";
import type { Builder } from "../builder.ts";
import { EXAMINE_WEIGHT } from "../limits/operation-cost.ts";

/** A stored piece with its examination. */
export const addExamination = (b: Builder) =>
  b.objectType("Examination", {
    interfaces: ["Node"],
    fields: (t) => ({
      id: t.exposeID("id"),
      version: t.exposeInt("version", {
        description: "Counts the changes; a change names the version it was made on.",
      }),
      changedAt: t.exposeString("changedAt"),
      deleted: t.exposeBoolean("deleted"),
      canUndo: t.boolean({ resolve: (examination) => examination.undoTo !== undefined }),
      piece: t.expose("piece", { type: "Piece" }),
      examined: t.field({
        description: "The piece examined on the newest revision, or on the one asked for.",
        extensions: { weight: EXAMINE_WEIGHT },
        type: b.results.examine,
        args: { revision: t.arg.int() },
        resolve: (examination, args, context) =>
          examinePiece(context, examination.piece, args.revision ?? undefined),
      }),
    }),
  });
