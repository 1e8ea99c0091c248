import type { TermId } from "../domain/ids.ts";
import { chainsOf } from "./chains.ts";
import type { Check, Subject } from "./check.ts";
import { contextAt } from "./context.ts";
import { placesWithin } from "./places.ts";
import { type View, viewFrom } from "./view.ts";

/** The same piece as if it had been said to be of another region: what was seen on it, and what excuses that, stays as it was read. */
export function subjectIn(region: TermId, subject: Subject): Subject {
  const { piece, graph } = subject;
  const places = placesWithin(graph, region);
  const views = new Map<string, View>();
  const kinds = new Map(piece.parts.map(({ id, kind }) => [id, kind]));
  const viewsOf = ({ part, exceptions }: Check): readonly View[] =>
    places.map((place) => {
      const kind = part === undefined ? undefined : kinds.get(part);
      const context = contextAt(graph, place, { form: piece.attribution.form, part: kind, exceptions });
      const view = views.get(context.key) ?? viewFrom(context, graph);
      views.set(context.key, view);
      return view;
    });
  return {
    ...subject,
    ...{ places, piece: { ...piece, attribution: { ...piece.attribution, region } } },
    checks: subject.checks.map((check) => {
      if (check.elsewhere) return check;
      const seen = viewsOf(check);
      return { ...check, views: seen, chains: chainsOf(seen) };
    }),
  };
}
