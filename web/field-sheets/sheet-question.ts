/** What a sheet is drawn up for, as it stands in the address. */
export interface SheetQuestion {
  readonly region: string | null;
  readonly date: string | null;
  /** Features told in full of one part. */
  readonly each: Each;
}

export const EACH = ["3", "5", "8"] as const;
export type Each = (typeof EACH)[number];
const USUAL_EACH: Each = "3";

/** Reads the address; what it does not say, or says wrongly, is left to the usual. */
export const readQuestion = (params: URLSearchParams): SheetQuestion => ({
  region: params.get("region") || null,
  date: params.get("date") || null,
  each: EACH.find((each) => each === params.get("each")) ?? USUAL_EACH,
});

/** The same as parameters of an address; the usual is left out. */
export function writeQuestion({ region, date, each }: SheetQuestion): URLSearchParams {
  return new URLSearchParams({
    ...(region ? { region } : {}),
    ...(date ? { date } : {}),
    ...(each === USUAL_EACH ? {} : { each }),
  });
}
