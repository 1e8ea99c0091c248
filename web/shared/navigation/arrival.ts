/**
 * After a navigation the next page heading takes the focus, once, so that a screen reader says where one is and the
 * keyboard goes on from there. The first page of a visit leaves the focus to the browser.
 */
let awaited = false;

/** Tells that a navigation began; the next heading to appear is its arrival. */
export function beginArrival(): void {
  awaited = true;
}

/** True once after each `beginArrival`. */
export function takeArrival(): boolean {
  const taken = awaited;
  awaited = false;
  return taken;
}
