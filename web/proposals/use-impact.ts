import { useApolloClient } from "@apollo/client/react";
import { useCallback, useEffect, useRef, useState } from "react";
import { sayFailure } from "../shared/ui/say-failure.ts";
import {
  ImpactOfProposalDocument,
  type ImpactOfProposalQuery,
  ImpactSoFarDocument,
  type ImpactSoFarQuery,
} from "./ImpactOfProposal.graphql.ts";
import { joinImpacts } from "./join-impacts.ts";

export type Impact = NonNullable<NonNullable<ImpactOfProposalQuery["proposal"]>["impact"]>;
/** How many pieces were looked at; nothing where no count is known. */
export type SoFar = NonNullable<ImpactSoFarQuery["proposal"]>["impactSoFar"];

/** How far the impact is, and what is known of it while it is not whole. `unfit`: the evidence would not take the proposal. */
export type ImpactStanding =
  | { readonly kind: "working" | "stopped"; readonly soFar: SoFar; readonly known?: Impact }
  | { readonly kind: "failed"; readonly says: string }
  | { readonly kind: "unfit" }
  | { readonly kind: "told"; readonly impact: Impact };

export interface ImpactRun {
  readonly standing: ImpactStanding;
  readonly stop: () => void;
  /** From the beginning, as the evidence stands then. */
  readonly again: () => void;
}

const soFarOf = ({ looked, left, movedCount }: Impact): NonNullable<SoFar> => ({
  ...{ looked, of: looked + left, moved: movedCount },
});

/** Milliseconds until the count is asked for again. */
const COUNT_AGAIN = 500;
/** Pieces whose answers are shown. */
const MOST_SHOWN = 5;

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
        setStanding((before) =>
          before.kind === "working"
            ? { ...before, soFar: { ...soFar, moved: soFar.moved + (before.known?.movedCount ?? 0) } }
            : before,
        );
    };
    const counting = setInterval(() => void count(), COUNT_AGAIN);

    const ask = async () => {
      try {
        for (let known: Impact | undefined; ; ) {
          const { data } = await client.query({
            query: ImpactOfProposalDocument,
            variables: {
              ...{ id, after: known?.reached ?? null },
              pieces: MOST_SHOWN - (known?.moved.length ?? 0),
            },
            ...{ fetchPolicy: "no-cache" as const, context },
          });
          if (stop.signal.aborted) return;
          const come: Impact | null | undefined = data?.proposal?.impact;
          if (!come) return setStanding({ kind: "unfit" });
          known = known === undefined ? come : joinImpacts(known, come);
          if (known?.left === 0) return setStanding({ kind: "told", impact: known });
          setStanding({ kind: "working", ...(known ? { soFar: soFarOf(known), known } : { soFar: null }) });
        }
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
    setStanding((before) => (before.kind === "working" ? { ...before, kind: "stopped" } : before));
  }, []);
  const again = useCallback(() => setTurn((before) => before + 1), []);
  return { standing, stop, again };
}
