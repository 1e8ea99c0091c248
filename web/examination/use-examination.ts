import { useApolloClient, useMutation } from "@apollo/client/react";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import { pieceToInput } from "#web/shared/apollo/piece-to-input.ts";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import { differences } from "./differences.ts";
import type { ExaminationFieldsFragment } from "./Examination.graphql.ts";
import {
  ChangeExaminationDocument,
  ExaminationNowDocument,
  UndoExaminationDocument,
} from "./ExaminationPage.graphql.ts";
import type { Edit } from "./edit-piece.ts";
import {
  canUndo,
  type ExaminationState,
  openState,
  type Reply,
  withDecision,
  withEdit,
  withReply,
  withTheirs,
} from "./examination-state.ts";
import { readExamination, type StoredExamination } from "./read-answer.ts";

export interface ExaminationDesk extends ExaminationState {
  /**
   * Shows the change at once and stores it; several in a row go out one after the other. `since` is the piece that was shown when the
   * change was begun, if others may have changed it meanwhile.
   */
  readonly edit: (change: Edit, since?: Piece) => void;
  /** The piece as it is shown at this moment. */
  readonly shown: () => Piece;
  readonly canUndo: boolean;
  readonly undo: () => void;
  /** Sends once more what could not be stored. */
  readonly retry: () => void;
  /** Where somebody changed the same meanwhile: what makes mine stand after all, or nothing to take theirs. */
  readonly decide: (mine: Edit | undefined) => void;
  /** What somebody else changed last, by name. */
  readonly theirs: readonly string[];
  /** Somebody stored that version: it is fetched and shown, beside what was done here. */
  readonly heard: (version: number) => void;
}

type Result =
  | { readonly __typename: "ExaminationChanged"; readonly examination: ExaminationFieldsFragment }
  | ({ readonly __typename: "Refused" } & {
      readonly problems: Extract<Reply, { kind: "refused" }>["problems"];
      readonly current: ExaminationFieldsFragment | null;
    });

type Ask = (stored: StoredExamination, piece: Piece) => Promise<Result | undefined>;

const replyFrom = (result: Result): Reply =>
  result.__typename === "ExaminationChanged"
    ? { kind: "changed", examination: readExamination(result.examination) }
    : {
        kind: "refused",
        problems: result.problems,
        current: result.current && readExamination(result.current),
      };

const replyFromFailure = (failure: unknown): Reply => {
  const { what, next } = sayFailure(failure);
  return { kind: "unreachable", says: `${what} ${next}` };
};

/** Holds one examination: what is shown, what is stored, and the way between. One request is under way at a time. */
export function useExamination(opened: StoredExamination): ExaminationDesk {
  const [state, setState] = useState(() => openState(opened));
  const [theirs, setTheirs] = useState<readonly string[]>([]);
  const latest = useRef(state);
  const isUnderWay = useRef(false);
  const queued = useRef<Ask | undefined>(undefined);
  /** The newest version that this page heard of. */
  const newest = useRef(0);
  // This page keeps the examination itself, and answers must be quick: they pass by the client's cache, which forgets
  // the answer when the page is left, so that other pages ask anew.
  const [change] = useMutation(ChangeExaminationDocument, { fetchPolicy: "no-cache" });
  const [takeBack] = useMutation(UndoExaminationDocument, { fetchPolicy: "no-cache" });
  const client = useApolloClient();
  const { cache } = client;
  const key = cache.identify({ __typename: "Examination", id: opened.id });
  useEffect(
    () => () => {
      // Not the whole: the page that arrives may have read the piece already.
      if (key !== undefined) cache.evict({ id: key, fieldName: "examined" });
    },
    [cache, key],
  );

  const show = useCallback((next: ExaminationState) => {
    latest.current = next;
    setState(next);
  }, []);

  const store = useCallback<Ask>(
    async ({ id, version }, piece) => {
      const { data } = await change({
        variables: { id, expectedVersion: version, piece: pieceToInput(piece) },
      });
      return data?.changeExamination;
    },
    [change],
  );

  const tellTheirs = useCallback((before: Piece, { piece, labels }: StoredExamination) => {
    const changed = differences(before, piece, (term) => labels.get(term) ?? term).map(({ of }) => of);
    if (changed.length > 0) setTheirs([...new Set(changed)]);
  }, []);

  const fetchNow = useCallback(async (): Promise<StoredExamination | undefined> => {
    const variables = { id: opened.id };
    const { data } = await client
      .query({ query: ExaminationNowDocument, variables, fetchPolicy: "no-cache" })
      .catch(() => ({ data: undefined }));
    return data?.examination ? readExamination(data.examination) : undefined;
  }, [client, opened.id]);

  /** One after the other: asks `first`, stores whatever was changed on the screen meanwhile, then fetches what others stored. */
  const send = useCallback(
    async (first?: Ask) => {
      queued.current = first ?? queued.current;
      if (isUnderWay.current) return;
      isUnderWay.current = true;
      for (;;) {
        const ask = queued.current;
        queued.current = undefined;
        if (ask) {
          const { stored, piece } = latest.current;
          const reply = await ask(stored, piece)
            .then((result) =>
              result ? replyFrom(result) : replyFromFailure(new Error("The answer was empty.")),
            )
            .catch(replyFromFailure);
          if (ask === store && reply.kind === "changed") tellTheirs(piece, reply.examination);
          const next = withReply(latest.current, piece, reply);
          show(next.state);
          if (next.isMore) queued.current = store;
        } else if (latest.current.stored.version < newest.current) {
          const wanted = newest.current;
          const fetched = await fetchNow();
          if (fetched === undefined) break;
          if (newest.current === wanted) newest.current = fetched.version;
          tellTheirs(latest.current.stored.piece, fetched);
          show(withTheirs(latest.current, fetched));
          if (latest.current.standing.kind === "saving") queued.current ??= store;
        } else break;
      }
      isUnderWay.current = false;
    },
    [show, store, fetchNow, tellTheirs],
  );

  const edit = useCallback(
    (how: Edit, since?: Piece) => {
      show(withEdit(latest.current, how, since));
      if (latest.current.standing.kind === "saving") void send(store);
    },
    [show, send, store],
  );

  const undo = useCallback(() => {
    const { standing, stored } = latest.current;
    if (!canUndo(latest.current)) return;
    if (standing.kind !== "saved") {
      show(openState(stored));
      return;
    }
    show({ ...latest.current, standing: { kind: "saving" } });
    void send(async ({ id, version }) => {
      const { data } = await takeBack({ variables: { id, expectedVersion: version } });
      return data?.undoExamination;
    });
  }, [show, send, takeBack]);

  const decide = useCallback(
    (mine: Edit | undefined) => {
      show(withDecision(latest.current, mine));
      if (latest.current.standing.kind === "saving") void send(store);
    },
    [show, send, store],
  );

  const retry = useCallback(() => {
    show({ ...latest.current, standing: { kind: "saving" } });
    void send(store);
  }, [show, send, store]);

  const heard = useCallback(
    (version: number) => {
      newest.current = Math.max(newest.current, version);
      void send();
    },
    [send],
  );

  const shown = useCallback(() => latest.current.piece, []);
  return { ...state, edit, shown, canUndo: canUndo(state), undo, retry, decide, theirs, heard };
}
