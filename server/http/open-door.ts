import { nextTurn } from "../ports/next-turn.ts";

/**
 * Lets requests in one by one, in their order, each in a turn of its own. Node takes a single new connection a turn: if all
 * requests that are there were answered in one, a turn would last as long as all of them, and whoever comes new would wait
 * for as many such turns as others came before.
 */
export function openDoor(): () => Promise<void> {
  let last = Promise.resolve();
  return () => {
    last = last.then(nextTurn);
    return last;
  };
}
