/** A key with what is held down: `mod` is Ctrl, or Cmd on a Mac. */
export interface Shortcut {
  readonly key: string;
  readonly mod?: boolean;
  readonly shift?: boolean;
}

/** Something a person can do: the same object makes the button, the menu entry and the shortcut. */
export interface Action<Context> {
  readonly id: string;
  /** A verb. */
  readonly label: string;
  readonly shortcut?: Shortcut;
  readonly isAllowed: (context: Context) => boolean;
  readonly perform: (context: Context) => void;
}

/** Performs it if it is allowed; tells whether it was. */
export function performIfAllowed<Context>(action: Action<Context>, context: Context): boolean {
  const isAllowed = action.isAllowed(context);
  if (isAllowed) action.perform(context);
  return isAllowed;
}
