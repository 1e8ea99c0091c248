import type { Hardness } from "../../domain/claim.ts";
import { compareText } from "../../domain/compare.ts";
import type { RuleOut } from "../../domain/report.ts";
import { isEmpty, meet, type Span, type Years, yearsApart } from "../../domain/years.ts";
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

export const DATE = held({ kind: "attr", of: "date" });

/** That the parts of some windows are of the first making: one atom for parts that are together, named by the first of them. */
export function originals(windows: readonly Window[], { parts }: Subject): readonly Held[] {
  const names = new Set(windows.flatMap(({ part }) => (part === undefined ? [] : parts.groupOf(part))));
  return [...names].map((part) => held({ kind: "original", part }));
}

/** One window against the claimed years; nothing if it meets them. */
export function clashWithClaimed(window: Window, subject: Subject): Clash | undefined {
  const claimed = [subject.claimed];
  if (isEmpty(window.made) || !isEmpty(meet(window.made, claimed))) return undefined;
  const atoms = [DATE, ...originals([window], subject)];
  return clashOf([window], "attribution", atoms, yearsApart(window.made, claimed));
}

/** One window that no year is left in, up to the year in which the piece was looked at. */
export function clashInItself(window: Window): Clash | undefined {
  if (!isEmpty(window.made)) return undefined;
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
  if (!areApart(a.made, b.made)) return undefined;
  const gap = yearsApart(a.made, b.made);
  const found = originals([a, b], subject);
  if (a.part === undefined || b.part === undefined) return clashOf([a, b], "attribution", found, gap);
  if (a.part === b.part) return clashOf([a, b], "observation", [], gap);
  return clashOf([a, b], "parts", found.length === 1 ? [] : found, gap);
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
