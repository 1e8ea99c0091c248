const KEY = "scribeline.looked-at";
/** Examinations remembered; those looked at least lately are forgotten first. */
const MOST = 500;

type Looked = readonly (readonly [examination: string, revision: number])[];

/** What was known when this visit began: so that what is told stays told as long as it lasts. */
let before: Looked | undefined;

/** The browser may refuse to keep anything: then nothing is kept, and nothing fails. */
function kept(): Looked {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(value) ? value.filter(isLook) : [];
  } catch {
    return [];
  }
}

const isLook = (value: unknown): value is Looked[number] =>
  Array.isArray(value) && typeof value[0] === "string" && Number.isInteger(value[1]);

/** The revision on which an examination was looked at in this browser, before this visit. */
export function lookedOn(examination: string): number | undefined {
  before ??= kept();
  return before.find(([id]) => id === examination)?.[1];
}

/** Keeps that an examination is looked at on a revision, for the next visit, in this browser alone. */
export function markLooked(examination: string, revision: number): void {
  before ??= kept();
  const others = kept().filter(([id]) => id !== examination);
  try {
    localStorage.setItem(KEY, JSON.stringify([[examination, revision], ...others].slice(0, MOST)));
  } catch {
    return;
  }
}

/** Begins another visit, for tests. */
export function beginVisit(): void {
  before = undefined;
}
