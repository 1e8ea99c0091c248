import { useState } from "react";
import type { Piece } from "#server/domain/examination.ts";
import { useDeeds } from "./desk.ts";

/** What is being typed in a field whose stored text others may change meanwhile. */
export interface Typed {
  readonly text: string;
  /** What stood there when the typing began. */
  readonly before: string;
  /** The piece as it was shown then; undefined while nothing is typed. */
  readonly since: Piece | undefined;
  readonly type: (text: string) => void;
  /** It was kept or dropped: from now on the field shows what is stored. */
  readonly end: () => void;
}

/** Keeps what one types until it is kept or dropped, whatever is stored meanwhile. */
export function useTyped(stored: string): Typed {
  const { shown } = useDeeds();
  const [typing, setTyping] = useState<{ text: string; before: string; since: Piece }>();
  return {
    text: typing?.text ?? stored,
    before: typing?.before ?? stored,
    since: typing?.since,
    type: (text) => setTyping((begun) => ({ ...(begun ?? { before: stored, since: shown() }), text })),
    end: () => setTyping(undefined),
  };
}
