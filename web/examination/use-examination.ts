import { useApolloClient, useMutation } from "@apollo/client/react";
import { useCallback, useEffect, useRef, useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import { pieceToInput } from "#web/shared/apollo/piece-to-input.ts";
import { sayFailure } from "#web/shared/ui/say-failure.ts";
import type { ExaminationFieldsFragment } from "./Examination.graphql.ts";
import { ChangeExaminationDocument, UndoExaminationDocument } from "./ExaminationPage.graphql.ts";
import type { Edit } from "./edit-piece.ts";
import {
  canUndo,
  type ExaminationState,
  openState,
  type Reply,
  withEdit,
  withReply,
} from "./examination-state.ts";
import { readExamination, type StoredExamination } from "./read-answer.ts";

export interface ExaminationDesk extends ExaminationState {
  /** Shows the change at once and stores it; several in a row go out one after the other. */
  readonly edit: (change: Edit) => void;
  readonly canUndo: boolean;
  readonly undo: () => void;
  /** Sends once more what could not be stored. */
  readonly retry: () => void;
  /** Where somebody changed it meanwhile: keeps mine over theirs, or takes theirs and drops mine. */
  readonly settle: (whose: "mine" | "theirs") => void;
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
  const latest = useRef(state);
  const isUnderWay = useRef(false);
  // This page keeps the examination itself, and answers must be quick: they pass by the client's cache, which forgets
  // the answer when the page is left, so that other pages ask anew.
  const [change] = useMutation(ChangeExaminationDocument, { fetchPolicy: "no-cache" });
  const [takeBack] = useMutation(UndoExaminationDocument, { fetchPolicy: "no-cache" });
  const { cache } = useApolloClient();
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

  /** Asks `first`, then stores whatever was changed on the screen meanwhile. */
  const send = useCallback(
    async (first: Ask) => {
      if (isUnderWay.current) return;
      isUnderWay.current = true;
      for (let ask: Ask | undefined = first; ask; ) {
        const { stored, piece, pending } = latest.current;
        const reply = await ask(stored, piece)
          .then((result) =>
            result ? replyFrom(result) : replyFromFailure(new Error("The answer was empty.")),
          )
          .catch(replyFromFailure);
        const next = withReply(latest.current, pending.length, reply);
        show(next.state);
        ask = next.isMore ? store : undefined;
      }
      isUnderWay.current = false;
    },
    [show, store],
  );

  const edit = useCallback(
    (how: Edit) => {
      show(withEdit(latest.current, how));
      void send(store);
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

  const settle = useCallback(
    (whose: "mine" | "theirs") => {
      const { standing, piece } = latest.current;
      if (standing.kind !== "changed-meanwhile") return;
      if (whose === "theirs") {
        show(openState(standing.theirs));
        return;
      }
      show(withEdit(openState(standing.theirs), () => piece));
      void send(store);
    },
    [show, send, store],
  );

  const retry = useCallback(() => {
    show({ ...latest.current, standing: { kind: "saving" } });
    void send(store);
  }, [show, send, store]);

  return { ...state, edit, canUndo: canUndo(state), undo, retry, settle };
}
