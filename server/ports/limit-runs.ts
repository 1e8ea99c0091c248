/** Lets at most `most` run at once and `waiting` wait; who comes beyond that is told so. */
export function limitRuns(most: number, waiting: number) {
  let running = 0;
  const line: (() => void)[] = [];
  return async <Result>(run: () => Promise<Result>): Promise<Result | "busy"> => {
    if (running >= most) {
      if (line.length >= waiting) return "busy";
      await new Promise<void>((resolve) => line.push(resolve));
    } else running++;
    try {
      return await run();
    } finally {
      const next = line.shift();
      if (next) next();
      else running--;
    }
  };
}
