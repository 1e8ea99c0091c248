import { useApolloClient } from "@apollo/client/react";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Change } from "#server/domain/change.ts";
import type { ProposalKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import { keepLocalCopy, type Written } from "./local-copy.ts";
import { BeginDraftDocument, HandInDocument, KeepDraftDocument } from "./Writing.graphql.ts";

/** Where what is written is kept. */
export type Kept = "nowhere" | "here" | "server" | "elsewhere" | "refused";
export interface Place {
  readonly id: string;
  readonly version: number;
  /** It is with the reviewers: each keeping makes a version that they have to read again, so it is kept only when asked to. */
  readonly isOpen?: boolean;
}
/** A form that is whole: what it would change, and what that is called where its maker says nothing. */
interface Whole {
  readonly change: Change;
  readonly line: string;
}
interface Given {
  readonly __typename: string;
  readonly proposal?: Place;
  readonly problems?: readonly { readonly code: string; readonly message: string }[];
}

const PAUSE = 1200;
const AGAIN = 8000;

const withoutWrong = ({ fields: { wrong: _, ...fields }, title, why }: Written): string =>
  JSON.stringify({ fields, title, why });

/**
 * Keeps a draft as it is written: on the server after each pause, on this machine while the server cannot be reached. Each keeping
 * names the version it was made on; where another tab kept a newer one, nothing is overwritten and `kept` is "elsewhere".
 */
export function useDraft(
  kind: ProposalKind,
  /** Under what it is kept on this machine before it has an id. */
  called: string,
  begun: Place | undefined,
  start: Written,
  written: Written,
  change: Change,
) {
  const client = useApolloClient();
  const place = useRef(begun);
  const latest = useRef({ kind, written, change });
  latest.current = { kind, written, change };
  const keptText = useRef(JSON.stringify(start));
  const begunWith = useRef(withoutWrong(start));
  const underWay = useRef<Promise<unknown>>(Promise.resolve());
  const [kept, setKept] = useState<Kept>(begun ? "server" : "nowhere");
  const [refused, setRefused] = useState<readonly string[]>([]);
  /** What was refused when it was handed in stays, though a draft of it is kept afterwards. */
  const isRefusedOpen = useRef(false);
  const [failures, setFailures] = useState(0);

  const send = useCallback(
    async (how: "keep" | "open", whole?: Whole): Promise<Place | undefined> => {
      const { kind, written: now, change: soFar } = latest.current;
      const at = place.current;
      // A pause that ended while the same was being kept: another version of it would overtake the page that shows the first.
      if (how === "keep" && whole === undefined && JSON.stringify(now) === keptText.current) return at;
      const title = whole !== undefined && now.title.trim() === "" ? whole.line : now.title;
      const form = Object.fromEntries(Object.entries(now.fields).filter(([, text]) => text.trim() !== ""));
      const input = { title, why: now.why, form, change: whole?.change ?? soFar, kind, base: null };
      const named = at ? { id: at.id, on: at.version, changes: input } : undefined;
      try {
        const { data } = named
          ? how === "open"
            ? await client.mutate({ mutation: HandInDocument, variables: named })
            : await client.mutate({ mutation: KeepDraftDocument, variables: named })
          : await client.mutate({ mutation: BeginDraftDocument, variables: { input, open: how === "open" } });
        const [given] = Object.values(data ?? {}).filter((one) => typeof one === "object") as Given[];
        if (given?.proposal) {
          keepLocalCopy(at?.id ?? called, undefined);
          place.current = { ...given.proposal, ...(at?.isOpen ? { isOpen: true } : {}) };
          keptText.current = JSON.stringify(now);
          setKept("server");
          if (how === "open" || !isRefusedOpen.current) setRefused([]);
          return given.proposal;
        }
        const problems = given?.problems ?? [];
        isRefusedOpen.current = how === "open";
        setKept(problems.some(({ code }) => code === "CHANGED_MEANWHILE") ? "elsewhere" : "refused");
        setRefused(problems.map(({ message }) => message));
      } catch (failure) {
        const isKept = keepLocalCopy(at?.id ?? called, { ...now, version: at?.version ?? 0 });
        const { what, next } = sayFailure(failure);
        setKept(isKept ? "here" : "refused");
        setFailures((before) => before + 1);
        setRefused(isKept && how === "keep" ? [] : [`${what} ${next}`]);
      }
      return undefined;
    },
    [client, called],
  );
  /** One at a time: the next names the version that the one before made. */
  const inTurn = useCallback(
    (how: "keep" | "open", whole?: Whole) => {
      const next = underWay.current.then(() => send(how, whole));
      underWay.current = next.catch(() => undefined);
      return next;
    },
    [send],
  );

  const text = JSON.stringify(written);
  const isBlank =
    Object.values(written.fields).every((one) => one.trim() === "") && written.why.trim() === "";
  useEffect(() => {
    if (isBlank || text === keptText.current || kept === "elsewhere") return undefined;
    // To say what is wrong and nothing more is to look at the form.
    if (place.current === undefined && withoutWrong(written) === begunWith.current) return undefined;
    if (place.current?.isOpen) return undefined;
    const timer = setTimeout(() => void inTurn("keep"), failures > 0 && kept === "here" ? AGAIN : PAUSE);
    const onBack = () => void inTurn("keep");
    addEventListener("online", onBack);
    // Whoever shuts the machine before the pause is over finds it here again.
    keepLocalCopy(place.current?.id ?? called, { ...written, version: place.current?.version ?? 0 });
    return () => {
      clearTimeout(timer);
      removeEventListener("online", onBack);
    };
  }, [text, isBlank, kept, failures, inTurn, called, written]);

  return {
    kept: isBlank ? ("nowhere" as const) : kept,
    isSaved: text === keptText.current,
    refused,
    place,
    /** Keeps it with this change, whole; the place it is kept under, or nothing where it was refused. */
    keep: (whole: Whole) => inTurn("keep", whole),
    open: (whole: Whole) => inTurn("open", whole),
    /** Goes on as another draft, where this one was changed in another place. */
    goOnApart: () => {
      place.current = undefined;
      keptText.current = "";
      setKept("nowhere");
      return inTurn("keep");
    },
  };
}
