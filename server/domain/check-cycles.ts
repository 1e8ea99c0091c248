import type { Claim } from "./claim.ts";
import type { GraphView } from "./graph-view.ts";
import { type Problem, problem } from "./problem.ts";
import type { Term } from "./term.ts";

/** A term among its own broader terms. */
export function checkBroader(term: Term, view: GraphView): readonly Problem[] {
  const path = walkBack(term.id, (id) => view.findTerm(id)?.broader);
  if (!path) return [];
  return [
    problem(
      "CYCLE_OF_BROADER_TERMS",
      `The term ${term.id} is broader than itself, by way of ${path.join(", ")}; give one of them another broader term or none.`,
      ["broader"],
    ),
  ];
}

/** A claim among the exceptions of its own exceptions: whether it holds could not be decided. */
export function checkExceptions(claim: Claim, view: GraphView): readonly Problem[] {
  const path = walkBack(claim.id, (id) => {
    const of = view.findClaim(id);
    return of?.relation === "void when" ? of.of : undefined;
  });
  if (!path) return [];
  return [
    problem(
      "CYCLE_OF_EXCEPTIONS",
      `The exception ${claim.id} is an exception of itself, by way of ${path.join(", ")}; let it name the claim it makes void.`,
      ["of"],
    ),
  ];
}

/** The steps from a thing back to itself, if there is such a way; a cycle further on is the fault of its own members. */
function walkBack(start: string, next: (id: string) => string | undefined): readonly string[] | undefined {
  const path: string[] = [];
  const seen = new Set<string>();
  for (let at = next(start); at !== undefined && !seen.has(at); at = next(at)) {
    path.push(at);
    if (at === start) return path;
    seen.add(at);
  }
  return undefined;
}
