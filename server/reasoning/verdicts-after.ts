import { ASSUMED } from "../domain/assumptions.ts";
import type { Change } from "../domain/change.ts";
import type { Claim } from "../domain/claim.ts";
import type { Piece } from "../domain/examination.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import type { TermId } from "../domain/ids.ts";
import type { Neighbourhood } from "../domain/neighbourhood.ts";
import type { Verdicts } from "../domain/verdicts.ts";
import { sameYears } from "../domain/years.ts";
import { compareHoldings } from "./atoms.ts";
import type { Bound } from "./bound.ts";
import { readSubject, type Subject } from "./check.ts";
import { knowGraph } from "./known-graph.ts";
import type { Resolved } from "./resolve.ts";
import { canBeExamined, verdictsOfSubject, verdictsOn } from "./verdicts-on.ts";
import type { View } from "./view.ts";

/** The claims of a change by which verdicts can become others: their subjects, and the ids of all of them. */
interface Edited {
  readonly subjects: ReadonlySet<TermId>;
  readonly ids: ReadonlySet<string>;
}

/**
 * What a piece comes to after a change, or `same` where it was found before working it out that nothing that verdicts are worked
 * out from is another: its places, the exceptions that hold, and at each place every bound and list of the terms that things seen
 * lead to. To find that is less work than the verdicts.
 */
export function verdictsAfter(
  piece: Piece,
  before: Neighbourhood,
  after: Neighbourhood,
  change: Change,
): Verdicts | "same" {
  const edited = editedIn(change);
  if (edited === undefined || !haveSameReach(before, after)) return verdictsOn(piece, after);
  const [was, is] = [before, after].map((neighbourhood) =>
    readSubject(piece, knowGraph(neighbourhood, ASSUMED), ASSUMED),
  ) as [Subject, Subject];
  if (readTheSame(was, is, edited)) return "same";
  // No term is another, so that it can be examined after the change where it can be before it.
  return canBeExamined(piece, before) ? verdictsOfSubject(is) : "same";
}

function readTheSame(was: Subject, is: Subject, edited: Edited): boolean {
  if (JSON.stringify(was.places) !== JSON.stringify(is.places)) return false;
  const pairs = new Map<View, View>();
  for (const [i, { views, exceptions }] of was.checks.entries()) {
    const other = is.checks[i];
    if (other === undefined || other.views.length !== views.length) return false;
    if (other.exceptions.key !== exceptions.key) return false;
    for (const [n, view] of views.entries()) {
      const now = other.views[n] as View;
      if (!areAlike(view, now)) return false;
      pairs.set(view, now);
    }
  }
  for (const [view, now] of pairs)
    for (const subject of edited.subjects) {
      if (isSame(view.resolve(subject), now.resolve(subject), edited)) continue;
      const isRead = was.checks.some(
        ({ seen, feature, views }) =>
          seen === "present" &&
          views.includes(view) &&
          view.reached(feature).some(({ term }) => term === subject),
      );
      if (isRead) return false;
    }
  return true;
}

/** Nothing where more can become another than what bounds the subjects: terms, signs, an exception that excepts something else. */
function editedIn(change: Change): Edited | undefined {
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

/** Then all claims about what either comes to are the same, but for those of the change. */
function haveSameReach(a: Neighbourhood, b: Neighbourhood): boolean {
  if (a.depths.size !== b.depths.size) return false;
  for (const term of a.depths.keys()) if (!b.depths.has(term)) return false;
  return true;
}

const areAlike = ({ context: a }: View, { context: b }: View): boolean =>
  a.key === b.key &&
  a.place.region === b.place.region &&
  a.place.elsewhere === b.place.elsewhere &&
  a.where.region === b.where.region &&
  a.where.form === b.where.form &&
  a.where.part === b.where.part;

/** Whether a term stands there as it did, without anything that the change edits. What is set aside counts by why alone. */
function isSame(a: Resolved, b: Resolved, { ids }: Edited): boolean {
  const listed = ({ lists }: Resolved): string => lists.map(({ claim }) => claim.id).join(" ");
  const reasons = ({ setAside, endless }: Resolved): string =>
    [...new Set([...setAside.values()].map(({ reason }) => reason))].sort().join() + (endless.length > 0);
  const rests = ({ bounds, lists }: Resolved): boolean =>
    bounds.some(({ claims }) => claims.some((claim) => ids.has(claim))) ||
    lists.some(({ claim }) => ids.has(claim.id));
  return (
    a.bounds.length === b.bounds.length &&
    listed(a) === listed(b) &&
    reasons(a) === reasons(b) &&
    !rests(a) &&
    !rests(b) &&
    a.bounds.every((bound, i) => isSameBound(bound, b.bounds[i] as Bound))
  );
}

const isSameBound = (a: Bound, b: Bound): boolean =>
  a.by === b.by &&
  a.hardness === b.hardness &&
  sameYears(a.outer, b.outer) &&
  sameYears(a.inner, b.inner) &&
  compareHoldings(a.held, b.held) === 0;
