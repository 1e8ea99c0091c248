/** How long a page may take to fill itself, in milliseconds. */
const LONGEST = 5_000;
/** What a person does to go elsewhere on a page. */
const MOVES = ["wheel", "touchstart", "pointerdown", "keydown"] as const;

/**
 * Puts a page at a place, and keeps it there while what stands above still comes in, until the person moves. Gives what
 * ends it.
 */
export function holdPlace(top: number): () => void {
  const put = () => window.scrollTo(0, top);
  put();
  if (top === 0) return () => {};
  const observer = new ResizeObserver(put);
  observer.observe(document.body);
  const end = () => {
    observer.disconnect();
    clearTimeout(last);
    for (const move of MOVES) removeEventListener(move, end);
  };
  const last = setTimeout(end, LONGEST);
  for (const move of MOVES) addEventListener(move, end, { passive: true });
  return end;
}
