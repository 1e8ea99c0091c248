import type { Year } from "#server/domain/years.ts";

const range = (least: number, most: number): string => (least === most ? `${least}` : `${least}–${most}`);
const yearsOf = (count: string): string => (count === "1" ? "1 year" : `${count} years`);

/** Whether every reading of the dates puts the one before the other. */
export const isToldLag = ([least = null, most = null]: readonly (Year | null)[]): boolean =>
  (least !== null && least > 0) || (most !== null && most < 0);

/** A lag in words, by the fewest and the most years that the dates allow: "18–38 years later", "no lag the dates can tell". */
export function sayLag(lag: readonly (Year | null)[]): string {
  const [least = null, most = null] = lag;
  if (least === 0 && most === 0) return "in the same year";
  if (!isToldLag(lag)) return "no lag the dates can tell";
  if (least === null) return `at least ${yearsOf(`${-(most ?? 0)}`)} earlier`;
  if (most === null) return `at least ${yearsOf(`${least}`)} later`;
  return least > 0 ? `${yearsOf(range(least, most))} later` : `${yearsOf(range(-most, -least))} earlier`;
}
