/**
 * What a generator gives, until nobody takes it any more: then `stop` fires, so that it does not wait for what may never come.
 */
export function stoppable<Given>(
  begin: (stop: AbortSignal) => AsyncGenerator<Given>,
): AsyncIterableIterator<Given> {
  const stop = new AbortController();
  const inner = begin(stop.signal);
  return {
    next: () => inner.next(),
    return: (value) => {
      stop.abort();
      return inner.return(value);
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}
