import { useMutation } from "@apollo/client/react";
import { useState } from "react";
import type { Seen } from "../shared/apollo/schema-types.graphql.ts";
import { sayFailure } from "../shared/ui/say-failure.ts";
import { type OnPlanFragment, RecordOnPlanDocument } from "./PlanOfPiece.graphql.ts";
import { type PieceOnPlan, withRecorded } from "./piece-on-plan.ts";

/** A piece whose plan is filled in: what is stored of it, and how more is recorded. */
export interface PieceDesk {
  readonly piece: PieceOnPlan;
  /** Stores how a thing was found on a part; null takes back what was recorded of it. One at a time. */
  readonly record: (on: { readonly part: string; readonly feature: string }, seen: Seen | null) => void;
  readonly isStoring: boolean;
  readonly refusal: string | undefined;
}

/** Records on a stored examination. Shown is what the server has, never what it refused. */
export function usePieceOnPlan({ id, version, piece }: OnPlanFragment): PieceDesk {
  const [change, { loading }] = useMutation(RecordOnPlanDocument);
  const [refusal, setRefusal] = useState<string>();
  const record: PieceDesk["record"] = async (on, seen) => {
    setRefusal(undefined);
    try {
      const variables = { id, expectedVersion: version, piece: withRecorded(piece, on, seen) };
      const result = (await change({ variables })).data?.changeExamination;
      if (result?.__typename === "Refused")
        setRefusal(
          result.current
            ? "Somebody changed the piece meanwhile. It is shown as it is now; record it again."
            : result.problems.map(({ message }) => message).join(" "),
        );
    } catch (failure) {
      const { what, next } = sayFailure(failure);
      setRefusal(`${what} ${next}`);
    }
  };
  return { piece, record: (on, seen) => void record(on, seen), isStoring: loading, refusal };
}
