/**
 * After a navigation the next page heading takes the focus, once, so that a screen reader says where one is and the
 * keyboard goes on from there. The first page of a visit leaves the focus to the browser.
 */
let isAwaited = false;
let isFirst = true;
let scroll: number | undefined;

/** Tells that a navigation began; the page that arrives is to be scrolled to `top`, in px. */
export function beginArrival(top: number): void {
  isAwaited = true;
  isFirst = false;
  scroll = top;
}

/** True until the first navigation of a visit: nothing stands there yet that could stay while the page is read. */
export const isFirstPage = (): boolean => isFirst;

/** True once after each `beginArrival`: for the heading of the page that arrives. */
export function takeArrival(): boolean {
  const taken = isAwaited;
  isAwaited = false;
  return taken;
}

/** Where to scroll, once after each `beginArrival`. */
export function takeScroll(): number | undefined {
  const taken = scroll;
  scroll = undefined;
  return taken;
}
