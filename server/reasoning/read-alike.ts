import type { Change } from "../domain/change.ts";
import type { Claim } from "../domain/claim.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import type { TermId } from "../domain/ids.ts";
import { sameYears } from "../domain/years.ts";
import { compareHoldings } from "./atoms.ts";
import type { Bound } from "./bound.ts";
import type { Check, Subject } from "./check.ts";
import type { Resolved } from "./resolve.ts";
import type { View } from "./view.ts";

/** The claims of a change by which answers can become others: their subjects, and the ids of all of them. */
export interface Edited {
  readonly subjects: ReadonlySet<TermId>;
  readonly ids: ReadonlySet<string>;
}

/** Nothing where more can become another than what bounds the subjects: terms, signs, an exception that excepts something else. */
export function editedIn(change: Change): Edited | undefined {
  const subjects = new Set<TermId>();
  const ids = new Set<string>();
  for (const edit of change) {
    if (edit.kind === "source") continue;
    if (edit.kind === "term") return undefined;
    ids.add(idOfEdit(edit));
    const sides: readonly (Claim | undefined)[] = [edit.before, edit.after];
    for (const claim of sides) {
      if (claim === undefined) continue;
      if (claim.relation === "indicates") return undefined;
      if (claim.relation !== "void when") subjects.add(claim.subject);
      else if (edit.before !== undefined && edit.after !== undefined) return undefined;
    }
  }
  return { subjects, ids };
}

/** Of a piece on two graphs: whether the verdicts of its report, and the odds of its parts, are worked out from the same. */
export interface Alike {
  readonly report: boolean;
  readonly odds: boolean;
}

const NEITHER: Alike = { report: false, odds: false };

/**
 * Holds a piece on a graph against the same on the graph after a change, both of one reach: its places, the exceptions that hold,
 * and at each place every bound and list of the terms that things seen lead to. Odds are also read from what was looked for and is
 * absent, but not from why a claim bounds nothing.
 */
export function readAlike(was: Subject, is: Subject, edited: Edited): Alike {
  if (JSON.stringify(was.places) !== JSON.stringify(is.places)) return NEITHER;
  const pairs = new Map<View, View>();
  for (const [i, { views, exceptions }] of was.checks.entries()) {
    const other = is.checks[i];
    if (other === undefined || other.views.length !== views.length) return NEITHER;
    if (other.exceptions.key !== exceptions.key) return NEITHER;
    for (const [n, view] of views.entries()) {
      const now = other.views[n] as View;
      if (!areAlike(view, now)) return NEITHER;
      pairs.set(view, now);
    }
  }
  let [report, odds] = [true, true];
  for (const [view, now] of pairs)
    for (const subject of edited.subjects) {
      const [before, after] = [view.resolve(subject), now.resolve(subject)];
      const isBound = isBoundAlike(before, after, edited);
      const isSilent = isSilentAlike(before, after);
      if (isBound && isSilent) continue;
      const readBy = was.checks.filter(
        ({ feature, views }) =>
          views.includes(view) && view.reached(feature).some(({ term }) => term === subject),
      );
      report &&= (isBound && isSilent) || !readBy.some(({ seen }) => seen === "present");
      odds &&= isBound || !readBy.some(isWeighed);
      if (!report && !odds) return NEITHER;
    }
  return { report, odds };
}

/** Whether a check counts in the odds of a part. */
const isWeighed = ({ seen, part }: Check): boolean => part !== undefined && seen !== "unseen";

const areAlike = ({ context: a }: View, { context: b }: View): boolean =>
  a.key === b.key &&
  a.place.region === b.place.region &&
  a.place.elsewhere === b.place.elsewhere &&
  a.where.region === b.where.region &&
  a.where.form === b.where.form &&
  a.where.part === b.where.part;

/** Whether a term is bound there as it was, by nothing that the change edits. */
function isBoundAlike(a: Resolved, b: Resolved, { ids }: Edited): boolean {
  const listed = ({ lists }: Resolved): string => lists.map(({ claim }) => claim.id).join(" ");
  const rests = ({ bounds, lists }: Resolved): boolean =>
    bounds.some(({ claims }) => claims.some((claim) => ids.has(claim))) ||
    lists.some(({ claim }) => ids.has(claim.id));
  return (
    a.bounds.length === b.bounds.length &&
    listed(a) === listed(b) &&
    !rests(a) &&
    !rests(b) &&
    a.bounds.every((bound, i) => isSameBound(bound, b.bounds[i] as Bound))
  );
}

/** Whether what is set aside is so for the same reasons, whichever claims they are: all that a finding says of them. */
function isSilentAlike(a: Resolved, b: Resolved): boolean {
  const reasons = ({ setAside, endless }: Resolved): string =>
    [...new Set([...setAside.values()].map(({ reason }) => reason))].sort().join() + (endless.length > 0);
  return reasons(a) === reasons(b);
}

const isSameBound = (a: Bound, b: Bound): boolean =>
  a.by === b.by &&
  a.hardness === b.hardness &&
  sameYears(a.outer, b.outer) &&
  sameYears(a.inner, b.inner) &&
  compareHoldings(a.held, b.held) === 0;
