import { useApolloClient } from "@apollo/client/react";
import { useCallback, useEffect, useRef, useState } from "react";
import { sayFailure } from "../shared/ui/say-failure.ts";
import {
  ImpactOfProposalDocument,
  type ImpactOfProposalQuery,
  ImpactSoFarDocument,
  type ImpactSoFarQuery,
} from "./ImpactOfProposal.graphql.ts";

export type Impact = NonNullable<NonNullable<ImpactOfProposalQuery["proposal"]>["impact"]>;
/** How many pieces were looked at; nothing where no count is known. */
export type SoFar = NonNullable<ImpactSoFarQuery["proposal"]>["impactSoFar"];

/** How far the impact is. `unfit`: the evidence would not take the proposal. */
export type ImpactStanding =
  | { readonly kind: "working"; readonly soFar: SoFar }
  | { readonly kind: "stopped"; readonly soFar: SoFar }
  | { readonly kind: "failed"; readonly says: string }
  | { readonly kind: "unfit" }
  | { readonly kind: "told"; readonly impact: Impact };

export interface ImpactRun {
  readonly standing: ImpactStanding;
  readonly stop: () => void;
  /** From the beginning, as the evidence stands then. */
  readonly again: () => void;
}

/** Milliseconds until the count is asked for again. */
const COUNT_AGAIN = 500;

/** Has the impact of a proposal worked out, as the evidence stands now, and asks how far it is until it comes. */
export function useImpact(id: string): ImpactRun {
  const client = useApolloClient();
  const [standing, setStanding] = useState<ImpactStanding>({ kind: "working", soFar: null });
  const [turn, setTurn] = useState(0);
  const underWay = useRef<AbortController>(undefined);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a turn asks once more for the same.
  useEffect(() => {
    const stop = new AbortController();
    underWay.current = stop;
    const context = { queryDeduplication: false, fetchOptions: { signal: stop.signal } };
    const variables = { id };
    setStanding({ kind: "working", soFar: null });

    let isCounting = false;
    const count = async () => {
      if (isCounting) return;
      isCounting = true;
      // A count that does not come is asked for again with the next.
      const found = await client
        .query({ query: ImpactSoFarDocument, variables, fetchPolicy: "no-cache", context })
        .catch(() => undefined);
      isCounting = false;
      const soFar = found?.data?.proposal?.impactSoFar;
      if (soFar && !stop.signal.aborted)
        setStanding((before) => (before.kind === "working" ? { kind: "working", soFar } : before));
    };
    const counting = setInterval(() => void count(), COUNT_AGAIN);

    const ask = async () => {
      try {
        const { data } = await client.query({
          query: ImpactOfProposalDocument,
          ...{ variables, fetchPolicy: "no-cache" as const, context },
        });
        if (stop.signal.aborted) return;
        const impact = data?.proposal?.impact;
        setStanding(impact ? { kind: "told", impact } : { kind: "unfit" });
      } catch (failure) {
        if (!stop.signal.aborted) setStanding({ kind: "failed", says: sayFailure(failure).what });
      } finally {
        clearInterval(counting);
      }
    };
    void ask();
    return () => {
      clearInterval(counting);
      stop.abort();
    };
  }, [client, id, turn]);

  const stop = useCallback(() => {
    underWay.current?.abort();
    setStanding((before) => (before.kind === "working" ? { kind: "stopped", soFar: before.soFar } : before));
  }, []);
  const again = useCallback(() => setTurn((before) => before + 1), []);
  return { standing, stop, again };
}
