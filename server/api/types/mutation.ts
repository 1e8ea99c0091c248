import { id } from "../../domain/ids.ts";
import { changeExamination } from "../../use-cases/do/change-examination.ts";
import { createExamination } from "../../use-cases/do/create-examination.ts";
import { deleteExamination } from "../../use-cases/do/delete-examination.ts";
import { undoExamination } from "../../use-cases/do/undo-examination.ts";
import type { Builder } from "../builder.ts";
import { withPiece } from "../piece-from-input.ts";
import type { PieceInputRef } from "./piece-input.ts";

const MADE_ON = "Version that the change was made on; refused if somebody changed it meanwhile.";

/** Everything that can be done. */
export const addMutation = (b: Builder, pieceInput: PieceInputRef) =>
  b.mutationType({
    fields: (t) => ({
      createExamination: t.field({
        type: b.results.change,
        args: {
          piece: t.arg({ type: pieceInput, required: true }),
          seenBy: t.arg.idList({
            description:
              "Persons who see it besides you, where several share the house; none is you alone, and left out or null the whole house.",
          }),
        },
        resolve: (_, { piece: given, seenBy }, context) =>
          withPiece(given, (piece) => createExamination(context, piece, seenBy?.map(String) ?? undefined)),
      }),
      changeExamination: t.field({
        type: b.results.change,
        args: {
          id: t.arg.id({ required: true }),
          expectedVersion: t.arg.int({
            required: true,
            description:
              "Version that the change was made on; what somebody changed meanwhile is kept beside it, and refused is what both changed.",
          }),
          piece: t.arg({ type: pieceInput, required: true }),
        },
        resolve: (_, args, context) =>
          withPiece(args.piece, (piece) =>
            changeExamination(context, id(args.id), args.expectedVersion, piece),
          ),
      }),
      undoExamination: t.field({
        description: "Takes back the newest change, a deletion too.",
        type: b.results.change,
        args: {
          id: t.arg.id({ required: true }),
          expectedVersion: t.arg.int({ required: true, description: MADE_ON }),
        },
        resolve: (_, args, context) => undoExamination(context, id(args.id), args.expectedVersion),
      }),
      deleteExamination: t.field({
        description: "Takes it out of the lists; an undo brings it back.",
        type: b.results.change,
        args: {
          id: t.arg.id({ required: true }),
          expectedVersion: t.arg.int({ required: true, description: MADE_ON }),
        },
        resolve: (_, args, context) => deleteExamination(context, id(args.id), args.expectedVersion),
      }),
    }),
  });
