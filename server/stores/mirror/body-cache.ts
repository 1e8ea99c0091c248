import { lengthened, roomFor } from "./change-lists.ts";

/** Parsed things by their number, at most so many; those not used lately are forgotten first. */
export interface BodyCache<Body> {
  readonly size: number;
  get(number: number): Body | undefined;
  set(number: number, body: Body): void;
  forget(number: number): void;
}

const FREE = -1;

/**
 * Looked up by place, which is much faster than a map of as many. A hand goes round over what is held: what was used since
 * it came by last stays, the first that was not makes room.
 * `numbers` is how many numbers there are so far.
 */
export function bodyCache<Body>(limit: number, numbers: number): BodyCache<Body> {
  const bodies = new Array<Body | undefined>(numbers).fill(undefined);
  const ring = new Int32Array(Math.max(1, limit)).fill(FREE);
  let used = new Uint8Array(numbers);
  let hand = 0;
  let size = 0;

  const makeRoom = (): void => {
    for (;;) {
      const number = ring[hand] as number;
      if (number === FREE || bodies[number] === undefined) return;
      if (used[number] === 0) {
        bodies[number] = undefined;
        size--;
        return;
      }
      used[number] = 0;
      hand = (hand + 1) % ring.length;
    }
  };
  return {
    get size() {
      return size;
    },
    get: (number) => {
      const body = bodies[number];
      if (body !== undefined) used[number] = 1;
      return body;
    },
    set: (number, body) => {
      if (bodies[number] === undefined) {
        makeRoom();
        ring[hand] = number;
        hand = (hand + 1) % ring.length;
        size++;
      }
      while (bodies.length <= number) bodies.push(undefined);
      if (used.length <= number) used = lengthened(used, roomFor(number));
      bodies[number] = body;
      used[number] = 0;
    },
    forget: (number) => {
      if (bodies[number] === undefined) return;
      bodies[number] = undefined;
      size--;
    },
  };
}
