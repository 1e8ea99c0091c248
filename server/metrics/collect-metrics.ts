import type { Metric, Tell } from "../ports/metrics.ts";

/** Milliseconds a part has to tell its numbers: whoever collects them waits for ten seconds at most. */
const PATIENCE = 2000;

/**
 * What all parts tell, by their names. A part that fails or takes too long is left out, and `scribeline_part_silent` says so: numbers are
 * wanted most when something is wrong.
 */
export async function collectMetrics(
  parts: Readonly<Record<string, Tell>>,
  patience = PATIENCE,
): Promise<readonly Metric[]> {
  const told = await Promise.all(
    Object.entries(parts).map(async ([part, tell]) => ({ part, metrics: await within(patience, tell) })),
  );
  const silent: Metric = {
    kind: "gauge",
    name: "scribeline_part_silent",
    help: "1 where a part of the program did not tell its numbers in time.",
    samples: told.map(({ part, metrics }) => ({ labels: { part }, value: metrics === undefined ? 1 : 0 })),
  };
  return [...told.flatMap(({ metrics = [] }) => metrics), silent];
}

async function within(patience: number, tell: Tell): Promise<readonly Metric[] | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), patience);
  });
  try {
    return await Promise.race([tell(), late]);
  } catch {
    return undefined;
  } finally {
    clearTimeout(timer);
  }
}
