import { TERM_KINDS, type TermKind } from "../domain/term.ts";
import type { ImportKind } from "../formats/check-import-line.ts";

/** What is known of the thing of a line as against the store. */
export type LineState = "new" | "stands" | "other";

/** Where each thing of a file stands, in little memory: a file may have millions of lines. */
export interface ImportIndex {
  /** The line of an id, if it came by already. */
  lineOf(id: string): number | undefined;
  add(id: string, line: number, kind: ImportKind | TermKind): void;
  kindAt(line: number): ImportKind | TermKind | undefined;
  /** Marks a line that names what waits itself, or what comes later (`isFirst`); what is not in the file counts as later. */
  setWaiting(line: number, isFirst: boolean): void;
  /** Takes the mark away: what names it later need not wait for it. */
  setGone(line: number): void;
  isWaiting(line: number): boolean;
  /** Whether a line that waits names what comes later, and not only what waits for that. */
  isFirst(line: number): boolean;
  setState(line: number, state: LineState): void;
  stateAt(line: number): LineState;
}

const KINDS: readonly (ImportKind | TermKind | undefined)[] = [undefined, "claim", "source", ...TERM_KINDS];
const STATES: readonly LineState[] = ["new", "stands", "other"];
const WAITS = 4;
const FIRST = 8;
const MARKS = WAITS | FIRST;

export function openIndex(): ImportIndex {
  const lines = new Map<string, number>();
  let kinds = new Uint8Array(1024);
  let states = new Uint8Array(1024);
  const grow = (line: number): void => {
    if (line < kinds.length) return;
    const [before, told] = [kinds, states];
    kinds = new Uint8Array(line * 2);
    states = new Uint8Array(line * 2);
    kinds.set(before);
    states.set(told);
  };
  return {
    lineOf: (id) => lines.get(id),
    add: (id, line, kind) => {
      grow(line);
      lines.set(id, line);
      kinds[line] = KINDS.indexOf(kind);
    },
    kindAt: (line) => KINDS[kinds[line] ?? 0],
    setWaiting: (line, isFirst) => {
      states[line] = (states[line] ?? 0) | (isFirst ? MARKS : WAITS);
    },
    setGone: (line) => {
      states[line] = (states[line] ?? 0) & ~MARKS;
    },
    isWaiting: (line) => ((states[line] ?? 0) & WAITS) > 0,
    isFirst: (line) => ((states[line] ?? 0) & FIRST) > 0,
    setState: (line, state) => {
      states[line] = ((states[line] ?? 0) & MARKS) | STATES.indexOf(state);
    },
    stateAt: (line) => STATES[(states[line] ?? 0) & ~MARKS] ?? "new",
  };
}
