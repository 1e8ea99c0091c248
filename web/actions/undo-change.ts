import type { Action } from "./action.ts";

/** What can be undone, and how. */
export interface Undoable {
  readonly canUndo: boolean;
  readonly undo: () => void;
}

/** Takes back the newest change. */
export const undoChange: Action<Undoable> = {
  id: "undo-change",
  label: "Undo",
  shortcut: { key: "z", mod: true },
  isAllowed: ({ canUndo }) => canUndo,
  perform: ({ undo }) => undo(),
};
