import type { Action } from "./action.ts";

/** Prints the page as it stands; the browser has the shortcut. */
export const printPage: Action<unknown> = {
  id: "print-page",
  label: "Print",
  isAllowed: () => true,
  perform: () => window.print(),
};
