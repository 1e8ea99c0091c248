import type { Factor } from "./model.ts";

/** What the factors of a group say of the years, whatever its states; divided by one scale. */
export interface Shape {
  readonly factors: readonly Factor[];
  /** P(seen | the part was made in year u), by u - from. */
  readonly seen: Float64Array;
  /** Its mean over the years after each: what is seen if the part is of some later year. */
  readonly after: Float64Array;
  /** P(seen | of the first making in year t, each dating feature of later work by chance). */
  readonly worked: Float64Array;
  /** Natural log of what all three are divided by. */
  readonly logScale: number;
}

/** Multiplies the factors of a group; each dating feature of a reworked part is of later work by chance `laterWork`. O(factors x years). */
export function shapeOf(factors: readonly Factor[], years: number, laterWork: number): Shape {
  const seen = new Float64Array(years).fill(1);
  const worked = new Float64Array(years).fill(1);
  let logScale = 0;
  for (const { byYear } of factors) {
    let largest = 0;
    let sum = 0;
    for (let t = years - 1; t >= 0; t--) {
      const value = byYear[t] as number;
      const after = t === years - 1 ? value : sum / (years - 1 - t);
      sum += value;
      const ofYear = (seen[t] as number) * value;
      const ofWork = (worked[t] as number) * ((1 - laterWork) * value + laterWork * after);
      seen[t] = ofYear;
      worked[t] = ofWork;
      if (ofYear > largest) largest = ofYear;
      if (ofWork > largest) largest = ofWork;
    }
    if (largest === 0) continue;
    for (let t = 0; t < years; t++) {
      seen[t] = (seen[t] as number) / largest;
      worked[t] = (worked[t] as number) / largest;
    }
    logScale += Math.log(largest);
  }
  return { factors, seen, after: meanAfter(seen), worked, logScale };
}

/** Mean over the years after each; at the last, the value there. */
export function meanAfter(values: Float64Array): Float64Array {
  const last = values.length - 1;
  const means = new Float64Array(values.length);
  means[last] = values[last] as number;
  let sum = 0;
  for (let t = last - 1; t >= 0; t--) {
    sum += values[t + 1] as number;
    means[t] = sum / (last - t);
  }
  return means;
}
