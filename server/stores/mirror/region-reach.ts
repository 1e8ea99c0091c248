import { NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** How regions lie to an asked one. */
export interface RegionReach {
  /** Begins an ask of a region; without one all that is asked then lies in it. */
  readonly ask: (region: number | undefined) => void;
  /** Whether a region is none, the asked one or above it. */
  readonly isAbove: (region: number) => boolean;
  /** The same, or below it. */
  readonly isNear: (region: number) => boolean;
}

const BELOW = 1;
const ABOVE = 2;

/** Looks at each region once an ask. */
export function regionReach(arrays: WalkArrays): RegionReach {
  /** By region: four times the ask that looked at it, and how it lies. */
  let marks = new Int32Array(0);
  let asks = 0;
  let asked: number | undefined;

  const lies = (region: number): number => {
    const mark = marks[region] as number;
    if (mark >>> 2 === asks) return mark & 3;
    const { broader } = arrays;
    let steps = 0;
    let term = region;
    while (term >= 0 && term !== asked && steps++ <= broader.length) term = broader[term] as number;
    const how = term >= 0 && term === asked ? BELOW : 0;
    marks[region] = asks * 4 + how;
    return how;
  };
  return {
    ask: (region) => {
      const { broader } = arrays;
      if (marks.length < broader.length || asks >= 2 ** 28) {
        marks = new Int32Array(broader.length);
        asks = 0;
      }
      asks++;
      asked = region;
      const above = asks * 4 + ABOVE;
      for (let term = region ?? NO_TERM; term >= 0 && marks[term] !== above; term = broader[term] as number)
        marks[term] = above;
    },
    isAbove: (region) => region === NO_TERM || asked === undefined || lies(region) === ABOVE,
    isNear: (region) => region === NO_TERM || asked === undefined || lies(region) !== 0,
  };
}
