/** Milliseconds of a turn after which nobody else is let in. */
const LONGEST = 10;

/**
 * Lets requests in one by one, in their order, in one turn only as many as are answered in some milliseconds. Node takes a
 * single new connection a turn: if all requests that are there were answered in one, a turn would last as long as all of
 * them, and whoever comes new would wait for as many such turns as others came before.
 */
export function openDoor(now = () => performance.now()): () => Promise<void> {
  const waiting: (() => void)[] = [];
  let isOpen = false;
  const beginTurn = (): void => letIn(now() + LONGEST);
  const letIn = (end: number): void => {
    const enter = waiting.shift();
    isOpen = enter !== undefined;
    if (enter === undefined) return;
    enter();
    // Only when all is done that this one does without waiting is it known how long it took: after the promises.
    queueMicrotask(() => process.nextTick(() => (now() < end ? letIn(end) : setImmediate(beginTurn))));
  };
  return () =>
    new Promise((enter) => {
      waiting.push(enter);
      if (!isOpen) setImmediate(beginTurn);
      isOpen = true;
    });
}
