import { Button } from "#web/shared/ui/Button.tsx";
import styles from "./ActionButton.module.css";
import { type Action, performIfAllowed } from "./action.ts";
import { ariaShortcut, sayShortcut } from "./shortcut.ts";

interface Props<Context> {
  action: Action<Context>;
  context: Context;
  look?: "main" | "plain" | "quiet";
}

/** The button of an action, with its shortcut beside the label. */
export const ActionButton = <Context,>({ action, context, look = "plain" }: Props<Context>) => (
  <Button
    look={look}
    isDisabled={!action.isAllowed(context)}
    onPress={() => performIfAllowed(action, context)}
    {...(action.shortcut ? { "aria-keyshortcuts": ariaShortcut(action.shortcut) } : {})}
  >
    {action.label}
    {action.shortcut ? (
      <span className={styles["keys"]} aria-hidden="true">
        {sayShortcut(action.shortcut)}
      </span>
    ) : null}
  </Button>
);
