import { compareText } from "../../domain/compare.ts";
import type { Observation, Part } from "../../domain/examination.ts";
import { id, type PartId, type TermId } from "../../domain/ids.ts";
import { questionOf } from "../../domain/one-of-a-family.ts";
import { isOnEveryPiece } from "../../domain/parts-of-form.ts";
import { ancestors, isWithin } from "../../domain/region.ts";
import type { Term } from "../../domain/term.ts";
import type { Subject } from "../check.ts";
import { isOfOtherForm } from "../sheet/is-of-other-form.ts";

/** Something that could be looked for on a part. */
export interface Candidate {
  readonly part: PartId;
  readonly feature: TermId;
}

export interface Candidates {
  /** Sorted by part, then feature. */
  readonly open: readonly Candidate[];
  readonly answered: number;
  readonly notOfPiece: number;
}

/** What is looked for on a piece as a whole may be of one form alone. */
const WHOLE = id<"term">("part.whole");

/**
 * What has not been looked for yet: the features looked for on the kind of each part or on a broader kind. Left out is what something
 * recorded on the part answers (the feature itself, a broader one, its look-alikes, the same question), and what no piece like this
 * has.
 */
export function candidatesOf(subject: Subject, features: readonly Term[]): Candidates {
  const { piece, graph } = subject;
  const byKind = new Map<TermId, Term[]>();
  for (const feature of features)
    for (const kind of feature.parts ?? []) byKind.set(kind, [...(byKind.get(kind) ?? []), feature]);
  const byId = new Map(features.map((feature) => [feature.id, feature]));
  const forOthers = new Set(
    features.filter((feature) => isOfOtherPiece(feature, subject)).map(({ id }) => id),
  );
  const open: Candidate[] = [];
  let answered = 0;
  let notOfPiece = 0;
  for (const part of piece.parts) {
    const isAnswered = answersOn(
      piece.observations.filter((made) => made.part === part.id),
      byId,
      graph.broader,
    );
    const here = new Set(kindsOf(part, graph.broader).flatMap((kind) => byKind.get(kind) ?? []));
    for (const feature of here)
      if (isAnswered(feature)) answered++;
      else if (forOthers.has(feature.id)) notOfPiece++;
      else open.push({ part: part.id, feature: feature.id });
  }
  open.sort((a, b) => compareText(a.part, b.part) || compareText(a.feature, b.feature));
  return { open, answered, notOfPiece };
}

const kindsOf = ({ kind }: Part, broader: Subject["graph"]["broader"]): readonly TermId[] =>
  kind === undefined ? [] : ancestors(kind, broader);

/** Whether a feature is answered by what was recorded on the same part. */
function answersOn(
  made: readonly Observation[],
  byId: ReadonlyMap<TermId, Term>,
  broader: Subject["graph"]["broader"],
): (feature: Term) => boolean {
  const recorded = new Set(made.flatMap(({ feature }) => ancestors(feature, broader)));
  const seen = made.filter(({ seen, sureness }) => seen === "present" && sureness === "sure");
  const absent = made.filter((one) => one.seen === "absent").map(({ feature }) => feature);
  const told = new Set<TermId>(
    seen.flatMap(({ feature }) =>
      (byId.get(feature)?.looking?.mistakenFor ?? []).flatMap(({ term }) => term ?? []),
    ),
  );
  const questions = new Set(seen.flatMap(({ feature }) => questionOf(feature, broader) ?? []));
  return ({ id: asked, looking }) => {
    if (recorded.has(asked) || told.has(asked)) return true;
    // Where the broader thing is not there, nothing narrower is.
    if (absent.some((feature) => isWithin(asked, feature, broader))) return true;
    if (looking?.mistakenFor?.some(({ term }) => seen.some(({ feature }) => feature === term))) return true;
    const question = questionOf(asked, broader);
    return question !== undefined && questions.has(question);
  };
}

/** Whether all particular kinds of part that a feature is looked for on are missing, or the feature is of other forms alone. */
function isOfOtherPiece({ id: feature, parts = [] }: Term, { piece, graph }: Subject): boolean {
  const own = parts.filter((kind) => !isOnEveryPiece(kind));
  const has = (kind: TermId): boolean =>
    piece.parts.some(
      (part) =>
        part.kind !== undefined &&
        (isWithin(part.kind, kind, graph.broader) || isWithin(kind, part.kind, graph.broader)),
    );
  if (own.length > 0 && !own.some(has)) return true;
  const { form } = piece.attribution;
  if (form === undefined || !parts.includes(WHOLE)) return false;
  const isForm = { has: (term: TermId) => term.startsWith("form.") };
  return isOfOtherForm(feature, form, isForm, graph);
}
