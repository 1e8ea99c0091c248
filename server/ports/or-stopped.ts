/** Resolves as the promise does, or when `stop` fires. */
export function orStopped(promise: Promise<void>, stop: AbortSignal): Promise<void> {
  if (stop.aborted) return Promise.resolve();
  return new Promise((resolve) => {
    const end = (): void => {
      stop.removeEventListener("abort", end);
      resolve();
    };
    stop.addEventListener("abort", end);
    void promise.then(end);
  });
}
