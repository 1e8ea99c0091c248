import type { Change, Edit, Graph } from "./change.ts";
import { checkBroader, checkExceptions } from "./check-cycles.ts";
import { checkSource } from "./check-source.ts";
import { checkTerm } from "./check-term.ts";
import { type GraphView, idOfEdit, type Standing, standingIn, viewAfter, viewOfGraph } from "./graph-view.ts";
import { makeClaim } from "./make-claim.ts";
import { type Name, namesOf } from "./names-of.ts";
import { type Problem, problem } from "./problem.ts";
import type { Term } from "./term.ts";

/**
 * Everything that speaks against a change of the graph that `view` shows: each edit by itself, what it names, cycles it
 * closes, and what still names a thing it withdraws. Looks only at the edits and what they touch. Paths of problems
 * start with the number of the edit. Rules [G13] to [G20] of docs/spec/2-graph.md.
 */
export function checkChange(change: Change, view: GraphView): readonly Problem[] {
  const after = viewAfter(view, change);
  return [...checkTwice(change), ...change.flatMap((edit, i) => under([i], checkEdit(edit, after)))];
}

/** Everything wrong with a whole graph, in the order of its terms, claims and sources. */
export function checkGraph(graph: Graph): readonly Problem[] {
  const view = viewOfGraph(graph);
  return standingIn(graph).flatMap((standing) =>
    under([`${standing.kind}s`, standing.thing.id], checkStanding(standing, view)),
  );
}

function checkTwice(change: Change): readonly Problem[] {
  const seen = new Map<string, number>();
  return change.flatMap((edit, i) => {
    const key = `${edit.kind} ${idOfEdit(edit)}`;
    const before = seen.get(key);
    seen.set(key, before ?? i);
    if (before === undefined) return [];
    return [problem("DUPLICATE_ID", `The change edits the ${key} twice; make one edit of it.`, [i])];
  });
}

function checkEdit(edit: Edit, after: GraphView): readonly Problem[] {
  if (edit.kind === "term" && edit.before && edit.after) {
    const problems = under(["after"], checkKindKept(edit.before, edit.after));
    if (problems.length > 0) return problems;
  }
  if (edit.after === undefined) return checkWithdrawal(edit, after);
  return under(["after"], checkStanding({ kind: edit.kind, thing: edit.after } as Standing, after));
}

/** A term that would be of another kind than it was. */
export function checkKindKept(before: Term, after: Term): readonly Problem[] {
  if (before.kind === after.kind) return [];
  return [
    problem(
      "WRONG_KIND_OF_TERM",
      `The term ${after.id} cannot turn from a ${before.kind} into a ${after.kind}; withdraw it and add another term.`,
      ["kind"],
    ),
  ];
}

function checkStanding(standing: Standing, view: GraphView): readonly Problem[] {
  const own = checkAlone(standing);
  if (own.length > 0) return own;
  return [
    ...namesOf(standing).flatMap((name) => checkName(name, view)),
    ...(standing.kind === "term" ? checkBroader(standing.thing, view) : []),
    ...(standing.kind === "claim" ? checkExceptions(standing.thing, view) : []),
  ];
}

/** What is wrong with a thing by itself, whatever else there is. */
export function checkAlone({ kind, thing }: Standing): readonly Problem[] {
  if (kind === "term") return checkTerm(thing);
  if (kind === "source") return checkSource(thing);
  const claim = makeClaim(thing);
  return "id" in claim ? [] : claim;
}

/** Whether what is named is there, and of a kind that can stand there. */
export function checkName(
  { kind, id, path, as, kinds }: Name,
  view: Pick<GraphView, "findTerm" | "findClaim" | "findSource">,
): readonly Problem[] {
  if (kind === "claim")
    return view.findClaim(id)
      ? []
      : [problem("UNKNOWN_CLAIM", `There is no claim ${id}, named as ${as}; add it or name another.`, path)];
  if (kind === "source")
    return view.findSource(id)
      ? []
      : [
          problem(
            "UNKNOWN_SOURCE",
            `There is no source ${id}, named as ${as}; add it or name another.`,
            path,
          ),
        ];
  const term = view.findTerm(id);
  if (!term)
    return [problem("UNKNOWN_TERM", `There is no term ${id}, named as ${as}; add it or name another.`, path)];
  if (kinds.includes(term.kind)) return [];
  const wanted = kinds.length === 1 ? `a ${kinds[0]}` : `one of ${kinds.join(", ")}`;
  return [
    problem(
      "WRONG_KIND_OF_TERM",
      `The term ${id} is a ${term.kind} and cannot be ${as}, which must be ${wanted}; name another term.`,
      path,
    ),
  ];
}

function checkWithdrawal(edit: Edit, after: GraphView): readonly Problem[] {
  const id = idOfEdit(edit);
  const [namer] = after.namersOf(edit.kind, id);
  if (namer === undefined) return [];
  const code = ({ term: "UNKNOWN_TERM", claim: "UNKNOWN_CLAIM", source: "UNKNOWN_SOURCE" } as const)[
    edit.kind
  ];
  return [
    problem(
      code,
      `The ${edit.kind} ${id} cannot be withdrawn: the ${namer.kind} ${namer.thing.id} names it; change or withdraw that too.`,
      ["before"],
    ),
  ];
}

const under = (path: Problem["path"], problems: readonly Problem[]): readonly Problem[] =>
  problems.map((found) => ({ ...found, path: [...path, ...found.path] }));
