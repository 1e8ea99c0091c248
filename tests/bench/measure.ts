/** One figure: a cost as a multiple of another, both measured in this run. */
export interface Ratio {
  /** What was measured. */
  readonly what: string;
  /** What it is compared with. */
  readonly against: string;
  /** Medians, in milliseconds. */
  readonly cost: number;
  readonly costAgainst: number;
  /** What the ratio is meant to stay within. */
  readonly atMost: number;
}

/** What a file `*.bench.ts` exports as `bench`. */
export type Bench = () => Promise<readonly Ratio[]>;

/**
 * All times of each of these, in milliseconds. They take turns on each input, so that a slow moment of the machine falls
 * on all, each time another first, as what runs before leaves the caches of the processor cold or warm; the first `warmUp`
 * rounds are not counted.
 */
export async function timesOf<Input, Name extends string>(
  inputs: readonly Input[],
  { rounds, warmUp }: { readonly rounds: number; readonly warmUp: number },
  runs: Readonly<Record<Name, (input: Input) => unknown>>,
): Promise<Readonly<Record<Name, readonly number[]>>> {
  const names = Object.keys(runs) as Name[];
  const times = new Map<Name, number[]>(names.map((name) => [name, []]));
  for (let round = 0; round < rounds + warmUp; round++)
    for (const [n, input] of inputs.entries())
      for (const place of names.keys()) {
        const name = names[(place + n + round) % names.length] as Name;
        const start = performance.now();
        await runs[name](input);
        if (round >= warmUp) times.get(name)?.push(performance.now() - start);
      }
  return Object.fromEntries(times) as unknown as Record<Name, readonly number[]>;
}

/** Median time of each, as `timesOf`. */
export async function medians<Input, Name extends string>(
  inputs: readonly Input[],
  rounds: { readonly rounds: number; readonly warmUp: number },
  runs: Readonly<Record<Name, (input: Input) => unknown>>,
): Promise<Readonly<Record<Name, number>>> {
  const times = await timesOf(inputs, rounds, runs);
  return Object.fromEntries(
    Object.entries<readonly number[]>(times).map(([name, each]) => [name, median(each)]),
  ) as Record<Name, number>;
}

export function median(numbers: readonly number[]): number {
  const sorted = numbers.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
