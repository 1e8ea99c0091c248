/** Milliseconds of a turn after which nobody else is let in. */
const LONGEST = 10;
/** Turns in which nobody is let in for the sake of new connections, one after the other. */
const MOST_PASSED = 200;

/**
 * Lets requests in one by one, in their order, in one turn only as many as are answered in some milliseconds. Node takes a
 * single new connection a turn: if all requests that are there were answered in one, a turn would last as long as all of
 * them, and whoever comes new would wait for as many such turns as others came before. While new ones come turn after turn,
 * nobody is let in, so that they are all there soon. `connection` is the one that a request came on.
 */
export function openDoor(now = () => performance.now()): (connection: object) => Promise<void> {
  const waiting: (() => void)[] = [];
  const known = new WeakSet<object>();
  let [isOpen, isNew, passed] = [false, false, 0];
  const beginTurn = (): void => {
    const passes = isNew && passed < MOST_PASSED;
    isNew = false;
    passed = passes ? passed + 1 : 0;
    if (passes) setImmediate(beginTurn);
    else letIn(now() + LONGEST);
  };
  const letIn = (end: number): void => {
    const enter = waiting.shift();
    isOpen = enter !== undefined;
    if (enter === undefined) return;
    enter();
    // Only when all is done that this one does without waiting is it known how long it took: after the promises.
    queueMicrotask(() => process.nextTick(() => (now() < end ? letIn(end) : setImmediate(beginTurn))));
  };
  return (connection) =>
    new Promise((enter) => {
      isNew ||= !known.has(connection);
      known.add(connection);
      waiting.push(enter);
      if (!isOpen) setImmediate(beginTurn);
      isOpen = true;
    });
}
