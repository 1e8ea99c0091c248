import { isProblem } from "../domain/problem.ts";
import { inTime } from "../ports/in-time.ts";
import type { Store } from "../ports/store.ts";
import { WRITES } from "../ports/writes.ts";
import type { Follower } from "./follow-writes.ts";

export interface OwnWrites {
  /** The same store; a write through it is answered when this process has followed it, or `patience` ends. */
  readonly store: Store;
  /** The number of the newest write that this process has followed, or made. */
  readonly sequence: () => number;
}

/**
 * Sees to it that a process knows of what it has written itself before it says so. `patience` counts milliseconds: a write
 * that was kept is never refused because somebody who was to be told of it fails.
 */
export function followOwnWrites(store: Store, follower: Follower, patience: number): OwnWrites {
  let written = 0;
  const settle = async (): Promise<void> => {
    follower.nudge();
    const newest = await store.newestWrite().catch(() => 0);
    written = Math.max(written, newest);
    await follower.reach(newest, patience);
  };
  return {
    sequence: () => Math.max(written, follower.sequence),
    store: new Proxy(store, {
      get(target, name) {
        const member: unknown = Reflect.get(target, name, target);
        if (typeof member !== "function" || !WRITES.has(name)) return member;
        return async (...args: unknown[]): Promise<unknown> => {
          const answer: unknown = await Reflect.apply(member, target, args);
          // The store may go silent between the two.
          if (!isProblem(answer)) await inTime(settle(), patience);
          return answer;
        };
      },
    }),
  };
}
