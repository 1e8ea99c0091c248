import type { Shortcut } from "./action.ts";

const isMac = (): boolean => /Mac|iP(hone|ad|od)/.test(navigator.platform);

/** True if the keys pressed are exactly those of the shortcut. */
export function isPressed(
  { key, mod = false, shift = false }: Shortcut,
  event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">,
): boolean {
  const held = isMac() ? event.metaKey : event.ctrlKey;
  return event.key.toLowerCase() === key && held === mod && event.shiftKey === shift && !event.altKey;
}

/** The shortcut as it stands in a label: "Ctrl+Z", on a Mac "⌘Z". */
export function sayShortcut({ key, mod = false, shift = false }: Shortcut): string {
  const name = key.length === 1 ? key.toUpperCase() : key;
  if (isMac()) return `${shift ? "⇧" : ""}${mod ? "⌘" : ""}${name}`;
  return [...(mod ? ["Ctrl"] : []), ...(shift ? ["Shift"] : []), name].join("+");
}

/** True where the keys belong to a field that undoes its own typing. */
export const isInField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) &&
  target.getAttribute("type") !== "radio" &&
  target.getAttribute("type") !== "checkbox";
