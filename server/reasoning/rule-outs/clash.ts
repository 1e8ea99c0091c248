import type { Hardness } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import type { RuleOut } from "../../domain/report.ts";
import { isEmpty, meet, type Span, type Years, yearsApart, yearsBetween } from "../../domain/years.ts";
import { type Held, type Holding, held, holdingBoth, holdingOf } from "../atoms.ts";
import type { Subject } from "../check.ts";
import type { Window } from "./windows.ts";

/** Atoms that cannot hold together at one place, not yet known to be minimal. */
export interface Clash {
  readonly held: Holding;
  readonly hardness: Hardness;
  readonly against: RuleOut["against"];
  readonly findings: readonly string[];
  readonly parts: RuleOut["parts"];
  readonly gapYears: number | undefined;
}

const DATE = held({ kind: "attr", of: "date" });
const original = ({ part }: Window): readonly Held[] =>
  part === undefined ? [] : [held({ kind: "original", part })];

/** One window against the claimed years; nothing if it meets them. */
export function clashWithClaimed(window: Window, claimed: Span): Clash | undefined {
  if (isEmpty(window.years) || !isEmpty(meet(window.years, [claimed]))) return undefined;
  return clashOf([window], "attribution", [DATE, ...original(window)], yearsApart(window.years, [claimed]));
}

/** One window that no year is left in, up to the year in which the piece was looked at. */
export function clashInItself(window: Window, examined: number): Clash | undefined {
  if (!isEmpty(meet(window.years, yearsBetween(Number.NEGATIVE_INFINITY, examined)))) return undefined;
  // No year at all: the claim excludes the place or form that is claimed, not a time.
  const isClaimed = isEmpty(window.years)
    ? window.held.some(({ atom }) => atom.kind === "attr")
    : window.part === undefined;
  return clashOf([window], isClaimed ? "attribution" : "observation", [], undefined);
}

/**
 * Two windows against each other. On one part, or on parts that are together, no year is left for what they share; on two parts,
 * both cannot be original. What is claimed of the whole has its years.
 */
export function clashOfTwo(a: Window, b: Window, subject: Subject): Clash | undefined {
  if (!areApart(a.years, b.years)) return undefined;
  const gap = yearsApart(a.years, b.years);
  if (a.part === undefined || b.part === undefined)
    return clashOf([a, b], "attribution", [...original(a), ...original(b)], gap);
  if (a.part === b.part) return clashOf([a, b], "observation", [], gap);
  const isOne = subject.parts.groupOf(a.part) === subject.parts.groupOf(b.part);
  return clashOf([a, b], "parts", isOne ? [] : [...original(a), ...original(b)], gap);
}

/** Whether two windows with years share none. */
function areApart(a: Years, b: Years): boolean {
  if (a.length === 1 && b.length === 1) {
    const [[a0, a1], [b0, b1]] = [a[0] as Span, b[0] as Span];
    return a1 < b0 || b1 < a0;
  }
  return !isEmpty(a) && !isEmpty(b) && isEmpty(meet(a, b));
}

/** Puts a clash together from windows and the further atoms it needs. */
export function clashOf(
  windows: readonly Window[],
  against: RuleOut["against"],
  atoms: readonly Held[],
  gapYears: number | undefined,
): Clash {
  return {
    held: windows.map((window) => window.held).reduce(holdingBoth, holdingOf(...atoms)),
    hardness: windows.some(({ hardness }) => hardness === "practice") ? "practice" : "physical",
    against,
    findings: [...new Set(windows.map(({ check }) => check.id))].sort(compareText),
    parts: [...new Set(windows.flatMap(({ part }) => part ?? []))].sort(compareText),
    gapYears,
  };
}
