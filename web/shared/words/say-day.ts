const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });

/** A moment (ISO 8601) as a day: "12 Nov 2026". */
export const sayDay = (at: string): string => day.format(new Date(at));
