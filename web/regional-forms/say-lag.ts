import type { Year } from "#server/domain/years.ts";

const range = (least: number, most: number): string => (least === most ? `${least}` : `${least}–${most}`);
const yearsOf = (count: string): string => (count === "1" ? "1 year" : `${count} years`);

/** A lag in words, by the fewest and the most years that the dates allow: "18–38 years later", "no lag the dates can tell". */
export function sayLag([least = null, most = null]: readonly (Year | null)[]): string {
  if (least === null && most === null) return "no lag the dates can tell";
  if (least === null)
    return most !== null && most < 0
      ? `at least ${yearsOf(`${-most}`)} earlier`
      : "no lag the dates can tell";
  if (most === null) return least > 0 ? `at least ${yearsOf(`${least}`)} later` : "no lag the dates can tell";
  if (least > 0) return `${yearsOf(range(least, most))} later`;
  if (most < 0) return `${yearsOf(range(-most, -least))} earlier`;
  return least === 0 && most === 0 ? "in the same year" : "no lag the dates can tell";
}
