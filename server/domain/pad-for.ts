/** Years by which "about" widens a date with at most one unknown digit. An assumption, shown as one. */
export const PAD_YEAR = 5;
/** Years by which "about" widens a date with two or more unknown digits. An assumption, shown as one. */
export const PAD_CENTURY = 25;

/** Years by which `~` or `%` widens a date with so many unknown digits. */
export const padFor = (unknownDigits: number): number => (unknownDigits >= 2 ? PAD_CENTURY : PAD_YEAR);
