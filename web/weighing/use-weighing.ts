import { useApolloClient } from "@apollo/client/react";
import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import type { Stage } from "#server/domain/weighing/weighing.ts";
import { pieceToInput } from "#web/shared/apollo/piece-to-input.ts";
import type { WeighingStage } from "#web/shared/apollo/schema-types.graphql.ts";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import { WeighPieceDocument } from "./WeighPiece.graphql.ts";
import { NOTHING_WEIGHED, type Weighed, withAnswer, withNothingFresh } from "./weighed.ts";
import { STEPS } from "./weighing-steps.ts";

/** How far the weighing is; `step` is the place in the list of steps. */
export type WeighingStanding =
  | { readonly kind: "waiting" }
  | { readonly kind: "working"; readonly step: number }
  | { readonly kind: "stopped"; readonly step: number }
  | { readonly kind: "failed"; readonly step: number; readonly says: string }
  | { readonly kind: "done" };

export interface WeighingRun {
  readonly weighed: Weighed;
  readonly standing: WeighingStanding;
  readonly stop: () => void;
  /** Works out what is missing: after a stop, or a failure. */
  readonly goOn: () => void;
}

/** Rest after the last change before anything is asked, in ms: the answer of the examination is painted first. */
const REST = 300;

const codeOf = (stage: Stage): WeighingStage => stage.toUpperCase() as Uppercase<Stage>;

/** What decides the weighing; a title or a note does not. */
const keyOf = (piece: Piece, revision: number): string => {
  const { title: _title, note: _note, ...rest } = pieceToInput(piece);
  return JSON.stringify([revision, rest]);
};

/** Calls back once the browser has nothing better to do; gives what cancels it. */
function whenAtRest(run: () => void): () => void {
  let idle: number | undefined;
  const timer = setTimeout(() => {
    if (typeof requestIdleCallback === "function") idle = requestIdleCallback(run, { timeout: REST });
    else run();
  }, REST);
  return () => {
    clearTimeout(timer);
    if (idle !== undefined) cancelIdleCallback(idle);
  };
}

/**
 * Weighs a piece step by step, after its strips stand. A change of the piece, or of what is assumed, ends what is under way and
 * begins anew; until then what was known stays, marked as of before. `mayAsk` is false while a change is on its way to the store.
 */
export function useWeighing(piece: Piece, revision: number | undefined, mayAsk: boolean): WeighingRun {
  const client = useApolloClient();
  const [weighed, setWeighed] = useState(NOTHING_WEIGHED);
  const [standing, setStanding] = useState<WeighingStanding>({ kind: "waiting" });
  const [turn, setTurn] = useState(0);
  const through = useRef({ key: "", steps: 0 });
  const halted = useRef<string>(undefined);
  const underWay = useRef<AbortController>(undefined);
  const key = useMemo(() => (revision === undefined ? undefined : keyOf(piece, revision)), [piece, revision]);
  const latest = useRef(piece);
  latest.current = piece;

  // biome-ignore lint/correctness/useExhaustiveDependencies: a turn asks once more for the same.
  useEffect(() => {
    if (key === undefined || revision === undefined || !mayAsk || halted.current === key) return;
    const stop = new AbortController();
    underWay.current = stop;
    const ask = async () => {
      if (through.current.key !== key) {
        through.current = { key, steps: 0 };
        setWeighed((before) => withNothingFresh(before, key));
      }
      const { steps } = through.current;
      setStanding(steps < STEPS.length ? { kind: "working", step: steps } : { kind: "done" });
      const input = pieceToInput(latest.current);
      for (let at = through.current.steps; at < STEPS.length; at++) {
        const step = STEPS[at];
        if (step === undefined || stop.signal.aborted) return;
        try {
          const { data } = await client.query({
            query: WeighPieceDocument,
            variables: {
              ...{ piece: input, revision, stages: step.asks.map(codeOf) },
              toLookFor: step.asks.includes("looks"),
            },
            fetchPolicy: "no-cache",
            context: { queryDeduplication: false, fetchOptions: { signal: stop.signal } },
          });
          if (stop.signal.aborted) return;
          const answer = data?.weigh;
          if (answer?.__typename !== "Weighed")
            throw new Error(
              answer?.problems.map(({ message }) => message).join(" ") ?? "The answer was empty.",
            );
          through.current = { key, steps: at + 1 };
          startTransition(() => {
            setWeighed((before) => withAnswer(before, step, answer));
            setStanding(at + 1 < STEPS.length ? { kind: "working", step: at + 1 } : { kind: "done" });
          });
        } catch (failure) {
          if (stop.signal.aborted) return;
          const { what, next } = sayFailure(failure);
          setStanding({ kind: "failed", step: at, says: `${what} ${next}` });
          return;
        }
      }
    };
    const cancel = whenAtRest(() => void ask());
    return () => {
      cancel();
      stop.abort();
    };
  }, [client, key, revision, mayAsk, turn]);

  const stop = useCallback(() => {
    underWay.current?.abort();
    halted.current = through.current.key;
    setStanding({ kind: "stopped", step: through.current.steps });
  }, []);
  const goOn = useCallback(() => {
    halted.current = undefined;
    setTurn((before) => before + 1);
  }, []);
  // Between a change and the next asking nothing is drawn anew; the line that tells how far it is says that it waits.
  const isOfBefore = key !== undefined && weighed.key !== "" && weighed.key !== key;
  return useMemo(
    () => ({
      weighed,
      standing: isOfBefore || !mayAsk ? ({ kind: "waiting" } as const) : standing,
      ...{ stop, goOn },
    }),
    [weighed, standing, isOfBefore, mayAsk, stop, goOn],
  );
}
