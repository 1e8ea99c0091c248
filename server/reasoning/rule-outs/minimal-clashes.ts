import { isHeldIn } from "../atoms.ts";
import type { Clash } from "./clash.ts";

/**
 * The clashes that contain no other (E26), each once: physical ones no physical one, practice ones none at all. (A physical clash can hold a
 * habit that clashes by itself: where an assumed begin rests on the first year of that habit.)
 */
export function minimalClashes(clashes: readonly Clash[]): readonly Clash[] {
  const physical = minimal(clashes.filter(({ hardness }) => hardness === "physical"));
  return [...physical, ...minimal(clashes).filter(({ hardness }) => hardness === "practice")];
}

function minimal(clashes: readonly Clash[]): readonly Clash[] {
  const bySize = clashes
    .map((clash) => ({ clash, mark: markOf(clash) }))
    .sort((a, b) => a.clash.held.length - b.clash.held.length);
  const found: typeof bySize = [];
  for (const one of bySize) {
    const holdsOther = found.some(
      (other) => (other.mark & ~one.mark) === 0 && isHeldIn(other.clash.held, one.clash.held),
    );
    if (!holdsOther) found.push(one);
  }
  return found.map(({ clash }) => clash);
}

/** One of 32 bits for each atom: a set whose bits are not all in another's cannot be part of it. */
function markOf({ held }: Clash): number {
  let mark = 0;
  for (const { key } of held) {
    let sum = 0;
    for (let i = 0; i < key.length; i++) sum = (sum * 31 + key.charCodeAt(i)) | 0;
    mark |= 1 << (sum & 31);
  }
  return mark;
}
