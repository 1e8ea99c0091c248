import { canonicalJson } from "./canonical-json.ts";

/** A place where two plain values are not the same; a side that has nothing there is left out. */
export interface DifferingPlace {
  /** JSON pointer (RFC 6901); empty for the whole. */
  readonly at: string;
  readonly before?: string;
  readonly after?: string;
}

/** How much of a value is told. */
const LONGEST = 200;

/** The first places in which two plain values differ, at most `most`, each as deep as it goes. */
export function findDiffering(before: unknown, after: unknown, most: number): readonly DifferingPlace[] {
  const found: DifferingPlace[] = [];
  const told = (value: unknown): string => canonicalJson(value).slice(0, LONGEST);
  const visit = (was: unknown, is: unknown, at: string): void => {
    if (found.length >= most) return;
    if (isHolder(was) && isHolder(is) && Array.isArray(was) === Array.isArray(is)) {
      const names = [...new Set([...Object.keys(was), ...Object.keys(is)])];
      for (const name of names)
        visit(was[name], is[name], `${at}/${name.replaceAll("~", "~0").replaceAll("/", "~1")}`);
      return;
    }
    if (was === undefined && is === undefined) return;
    if (was !== undefined && is !== undefined && canonicalJson(was) === canonicalJson(is)) return;
    found.push({
      at,
      ...(was === undefined ? {} : { before: told(was) }),
      ...(is === undefined ? {} : { after: told(is) }),
    });
  };
  visit(before, after, "");
  return found;
}

const isHolder = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;
