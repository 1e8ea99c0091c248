import { useEffect, useRef } from "react";
import { type Action, performIfAllowed } from "./action.ts";
import { isInField, isPressed } from "./shortcut.ts";

/** Listens for the shortcuts of actions while the component is there. Fields keep their own undo. */
export function useShortcuts<Context>(actions: readonly Action<Context>[], context: Context): void {
  const now = useRef({ actions, context });
  useEffect(() => {
    now.current = { actions, context };
  });
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isInField(event.target)) return;
      const { actions: all, context: at } = now.current;
      const action = all.find(({ shortcut }) => shortcut && isPressed(shortcut, event));
      if (action && performIfAllowed(action, at)) event.preventDefault();
    };
    addEventListener("keydown", listen);
    return () => removeEventListener("keydown", listen);
  }, []);
}
