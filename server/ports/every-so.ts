/** Does something every so many milliseconds, once at a time, until it is stopped; what is under way then is waited for. */
export function everySo(
  milliseconds: number,
  act: () => Promise<unknown>,
  onFailure: (failure: unknown) => void,
): { readonly stop: () => Promise<void> } {
  let underWay: Promise<void> | undefined;
  const timer = setInterval(() => {
    underWay ??= act()
      .then(() => undefined, onFailure)
      .finally(() => {
        underWay = undefined;
      });
  }, milliseconds);
  timer.unref();
  return {
    stop: async () => {
      clearInterval(timer);
      await underWay;
    },
  };
}
