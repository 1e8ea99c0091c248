import type { Change, Edit } from "../change.ts";
import type { Claim } from "../claim.ts";
import type { Standing } from "../graph-view.ts";
import { id } from "../ids.ts";
import { isSame } from "../is-same.ts";
import { namesOf } from "../names-of.ts";
import { type Problem, problem } from "../problem.ts";
import type { Term } from "../term.ts";
import { renamedIn } from "./renamed-in.ts";

/** The claim that ties a retired term to the one that stands for it. */
export const linkOf = (merged: Pick<Term, "id">): string => `claim.${merged.id.replace(".", "-")}-merged`;

/**
 * Two terms that are one thing, as an ordinary change: what names `merged` names `kept` from then on, its labels become other
 * labels of `kept`. `merged` stays under its id, below `kept`, marked as one with it and with a note that says so, since stored examinations name it;
 * where its kind can be made of something, a claim says that it is `kept`, so that they are bound by the same years. What
 * would name `kept` twice over (it requires itself) stays with `merged`.
 */
export function mergeTerms(kept: Term, merged: Term, namers: readonly Standing[]): Change | Problem {
  if (kept.id === merged.id)
    return problem("WRONG_FORMAT", "These are one term already; choose another to merge it into.", ["into"]);
  if (kept.merged)
    return problem(
      "UNKNOWN_TERM",
      `${kept.label} is one with another by now; merge into the term that stands for both.`,
      ["into"],
    );
  if (kept.kind !== merged.kind)
    return problem(
      "WRONG_KIND_OF_TERM",
      `A ${merged.kind} cannot be merged into a ${kept.kind}; choose a term of the same kind.`,
      ["into"],
    );
  const others = namers.filter(({ thing }) => thing.id !== kept.id && thing.id !== merged.id);
  const keptNow = withAll(renamedThing(kept, merged, kept), merged);
  return [
    { kind: "term", before: kept, after: keptNow },
    { kind: "term", before: merged, after: retired(merged, kept) },
    ...others.flatMap((standing): readonly Edit[] => {
      if (namesKept(standing, kept)) return [];
      const after = renamedIn(standing, merged.id, kept.id);
      return isSame(after.thing, standing.thing)
        ? []
        : [{ kind: standing.kind, before: standing.thing, after: after.thing } as Edit];
    }),
    ...link(kept, merged, others),
  ];
}

/** Claims that name the other term as well would say something of a thing and itself. */
const namesKept = (standing: Standing, kept: Term): boolean =>
  standing.kind === "claim" && namesOf(standing).some(({ id: named }) => named === kept.id);

function renamedThing(term: Term, from: Term, to: Term): Term {
  // What lay below the merged term directly lies where that one lay.
  if (term.broader === from.id) {
    const { broader: _, ...rest } = term;
    return from.broader === undefined ? rest : { ...rest, broader: from.broader };
  }
  return renamedIn({ kind: "term", thing: term }, from.id, to.id).thing as Term;
}

/** The kept term with what the merged one says besides. */
function withAll(kept: Term, merged: Term): Term {
  const labels = [...new Set([...(kept.otherLabels ?? []), merged.label, ...(merged.otherLabels ?? [])])];
  const parts = [...new Set([...(kept.parts ?? []), ...(merged.parts ?? [])])];
  const { note, looking, aat } = merged;
  return {
    ...(note === undefined ? {} : { note }),
    ...(looking === undefined ? {} : { looking }),
    ...(aat === undefined ? {} : { aat }),
    ...(merged.broader === undefined || merged.broader === kept.id ? {} : { broader: merged.broader }),
    ...kept,
    otherLabels: labels.filter((label) => label !== kept.label),
    ...(parts.length > 0 ? { parts } : {}),
  };
}

const retired = ({ parts, ...merged }: Term, kept: Term): Term => ({
  ...merged,
  // What is looked for on a part is the term that stands for both.
  ...(parts === undefined || merged.kind === "feature" ? {} : { parts }),
  ...{ broader: kept.id, merged: true },
  note: [`The same as ${kept.label}, which stands for both.`, ...(merged.note ? [merged.note] : [])].join(
    " ",
  ),
});

const NEVER_MADE: readonly Term["kind"][] = ["region", "part"];

function link(kept: Term, merged: Term, others: readonly Standing[]): Change {
  const isTied = others.some(
    ({ kind, thing }) =>
      kind === "claim" &&
      thing.relation === "requires" &&
      thing.subject === merged.id &&
      thing.ways.some((way) => way.includes(kept.id)),
  );
  if (NEVER_MADE.includes(merged.kind) || isTied) return [];
  const claim: Claim = {
    id: id<"claim">(linkOf(merged)),
    ...{ relation: "requires", subject: merged.id, scope: {}, hardness: "physical" },
    ...{ ways: [[kept.id]], closed: true, strength: "firm", status: "accepted" },
    citations: [{ basis: "common practice", note: "Two names of one thing." }],
  };
  return [{ kind: "claim", after: claim }];
}
