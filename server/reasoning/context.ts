import type { TermId } from "../domain/ids.ts";
import { isWithin } from "../domain/region.ts";
import type { Place } from "../domain/report.ts";
import type { Whereabouts } from "../domain/scope.ts";
import type { Exceptions } from "./exceptions.ts";
import type { KnownGraph } from "./known-graph.ts";

/** Where a question is asked: at a place, of a form and a kind of part, with the exceptions that hold there. */
export interface Context {
  readonly place: Place;
  readonly where: Whereabouts;
  readonly exceptions: Exceptions;
  /** Contexts with one key get one answer. */
  readonly key: string;
}

/** A context. Its key names no more than claims can tell apart: forms and kinds of part count by the scopes they meet. */
export function contextAt(
  graph: KnownGraph,
  place: Place,
  of: {
    readonly form: TermId | undefined;
    readonly part: TermId | undefined;
    readonly exceptions: Exceptions;
  },
): Context {
  const met = (term: TermId | undefined, dimension: "form" | "part"): string =>
    term === undefined
      ? ""
      : graph.scopes[dimension].filter((scope) => isWithin(term, scope, graph.broader)).join(",");
  const key = [
    `${place.region ?? "*"}${place.elsewhere ? "+" : ""}`,
    met(of.form, "form"),
    met(of.part, "part"),
    of.exceptions.key,
  ].join("|");
  const where = { region: place.region ?? undefined, form: of.form, part: of.part };
  return { place, where, exceptions: of.exceptions, key };
}
