import { isHeldIn } from "../atoms.ts";
import type { Clash } from "./clash.ts";

/** The clashes that contain no other (E26), each once; of two with the same atoms the first stands. */
export function minimalClashes(clashes: readonly Clash[]): readonly Clash[] {
  const bySize = clashes
    .map((clash) => ({ clash, mark: markOf(clash) }))
    .sort((a, b) => a.clash.held.length - b.clash.held.length);
  const minimal: typeof bySize = [];
  for (const one of bySize) {
    const holdsOther = minimal.some(
      (other) => (other.mark & ~one.mark) === 0 && isHeldIn(other.clash.held, one.clash.held),
    );
    if (!holdsOther) minimal.push(one);
  }
  return minimal.map(({ clash }) => clash);
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
