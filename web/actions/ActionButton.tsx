import { Button } from "#web/shared/ui/Button.tsx";
import styles from "./ActionButton.module.css";
import { type Action, performIfAllowed } from "./action.ts";
import { sayShortcut } from "./shortcut.ts";

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
  >
    {action.label}{" "}
    {action.shortcut ? <kbd className={styles["keys"]}>{sayShortcut(action.shortcut)}</kbd> : null}
  </Button>
);
