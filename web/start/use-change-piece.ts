import { useMutation } from "@apollo/client/react";
import { useState } from "react";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { DeletePieceDocument, type PieceChangedFragment, UndoPieceDocument } from "./change-piece.graphql.ts";
import type { PieceRowFragment } from "./PieceRow.graphql.ts";

/** Deletes a piece or takes its last change back. A refusal comes as the sentence to show beside the piece. */
export function useChangePiece({ id, version }: PieceRowFragment) {
  const [deletePiece, deletion] = useMutation(DeletePieceDocument);
  const [undoPiece, undoing] = useMutation(UndoPieceDocument);
  const [refusal, setRefusal] = useState<string>();
  const settle = (result: PieceChangedFragment | undefined) =>
    setRefusal(
      result?.__typename === "Refused"
        ? result.problems.map((problem) => problem.message).join(" ")
        : undefined,
    );
  const change = async (what: "delete" | "undo") => {
    const variables = { id, expectedVersion: version };
    try {
      if (what === "delete") settle((await deletePiece({ variables })).data?.deleteExamination);
      else settle((await undoPiece({ variables })).data?.undoExamination);
    } catch (failure) {
      const { what: happened, next } = sayFailure(failure);
      setRefusal(`${happened} ${next}`);
    }
  };
  return { change, refusal, isChanging: deletion.loading || undoing.loading };
}
