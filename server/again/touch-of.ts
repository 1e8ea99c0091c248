import type { Change, Edit } from "../domain/change.ts";
import type { Claim } from "../domain/claim.ts";
import { idOfEdit } from "../domain/graph-view.ts";
import { type ClaimId, id, type TermId } from "../domain/ids.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import type { Store } from "../ports/store.ts";
import { digestClaim, digestTerm } from "./digest-neighbourhood.ts";

/** What a change can touch: who reached one of the subjects, or read one of the terms. */
export interface Touch {
  readonly subjects: ReadonlySet<TermId>;
  readonly terms: ReadonlySet<TermId>;
}

/** Claims as they stood before a change and as they stand after it. */
export type FindClaims = (ids: readonly ClaimId[]) => Promise<readonly Claim[]>;

/** Claims on both sides of the change that made a revision, the newest unless one is named. */
export const claimsAround =
  (store: Store, revision?: RevisionNumber): FindClaims =>
  async (ids) => {
    const after = revision ?? (await store.newestRevision())?.number ?? 0;
    const before = Math.max(0, after - 1);
    const [was, is] = [await store.claims(ids, before), await store.claims(ids, after)];
    return [...was.values(), ...is.values()];
  };

/**
 * What a change can touch (K4). A claim touches by its subject, before and after; an exception by the subject that its
 * claim, or the claim of that, is about. What the engine does not read touches nothing: names, notes, claims that are not
 * accepted.
 */
export async function touchOf(change: Change, findClaims: FindClaims): Promise<Touch> {
  const subjects = new Set<TermId>();
  const terms = new Set<TermId>();
  let of = new Set<ClaimId>();
  const meet = (claim: Claim): void => {
    if (claim.relation === "void when") of.add(claim.of);
    else subjects.add(claim.subject);
  };
  const edited = new Map<string, Claim[]>();
  for (const edit of change) {
    if (edit.kind === "claim")
      edited.set(
        idOfEdit(edit),
        [edit.before, edit.after].filter((side) => side !== undefined),
      );
    if (isUnread(edit)) continue;
    if (edit.kind === "term") terms.add(id(idOfEdit(edit)));
    if (edit.kind === "claim") for (const side of accepted(edit)) meet(side);
  }
  const asked = new Set<ClaimId>();
  while (of.size > 0) {
    const next = [...of].filter((claim) => !asked.has(claim));
    of = new Set();
    if (next.length === 0) break;
    for (const claim of next) asked.add(claim);
    for (const claim of [...(await findClaims(next)), ...next.flatMap((name) => edited.get(name) ?? [])])
      meet(claim);
  }
  return { subjects, terms };
}

/** Whether the engine reads the same before and after. */
function isUnread(edit: Edit): boolean {
  if (edit.kind === "source") return true;
  if (edit.kind === "term")
    return edit.before && edit.after ? digestTerm(edit.before) === digestTerm(edit.after) : false;
  const [one, other, ...rest] = accepted(edit);
  if (one === undefined) return true;
  return other !== undefined && rest.length === 0 && digestClaim(one) === digestClaim(other);
}

const accepted = ({ before, after }: Extract<Edit, { kind: "claim" }>): readonly Claim[] =>
  [before, after].filter((side) => side?.status === "accepted") as readonly Claim[];
