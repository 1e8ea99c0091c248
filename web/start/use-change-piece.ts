import { useMutation } from "@apollo/client/react";
import { useRef, useState } from "react";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { DeletePieceDocument, type PieceChangedFragment, UndoPieceDocument } from "./change-piece.graphql.ts";
import type { PieceRowFragment } from "./PieceRow.graphql.ts";

/**
 * Deletes a piece or takes its last change back; pressed twice, once. A refusal comes as the sentence to show beside the piece.
 * Buttons are not disabled meanwhile: the one that takes the place of the other stands before the change is through, and
 * gets the focus, which a disabled one does not take.
 */
export function useChangePiece({ id, version }: PieceRowFragment) {
  const [deletePiece] = useMutation(DeletePieceDocument);
  const [undoPiece] = useMutation(UndoPieceDocument);
  /** The version that is being changed. */
  const underWay = useRef<number>(undefined);
  const [refusal, setRefusal] = useState<string>();
  const settle = (result: PieceChangedFragment | undefined) =>
    setRefusal(
      result?.__typename === "Refused"
        ? result.problems.map((problem) => problem.message).join(" ")
        : undefined,
    );
  const change = async (what: "delete" | "undo") => {
    if (underWay.current === version) return;
    underWay.current = version;
    const variables = { id, expectedVersion: version };
    try {
      if (what === "delete") settle((await deletePiece({ variables })).data?.deleteExamination);
      else settle((await undoPiece({ variables })).data?.undoExamination);
    } catch (failure) {
      const { what: happened, next } = sayFailure(failure);
      setRefusal(`${happened} ${next}`);
    } finally {
      if (underWay.current === version) underWay.current = undefined;
    }
  };
  return { change, refusal };
}
