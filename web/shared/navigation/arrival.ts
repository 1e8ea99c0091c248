/**
 * After a navigation the next page heading takes the focus, once, so that a screen reader says where one is and the
 * keyboard goes on from there. The first page of a visit leaves the focus to the browser.
 */
let awaited = false;
let isNew = false;

/** Tells that a navigation began. `toNew` is false when it goes back or forth to a page that was already visited. */
export function beginArrival(toNew: boolean): void {
  awaited = true;
  isNew = toNew;
}

/** True once after each `beginArrival`: for the heading of the page that arrives. */
export function takeArrival(): boolean {
  const taken = awaited;
  awaited = false;
  return taken;
}

/** True once after each navigation to a new page: for the window that has to begin at its top. */
export function takeNewPage(): boolean {
  const taken = isNew;
  isNew = false;
  return taken;
}
