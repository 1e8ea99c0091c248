import type { Wishes } from "#server/generator/graph-plan.ts";
import { makeGraph } from "#server/generator/make-graph.ts";
import { boundOf, numberOf } from "./dating-question.ts";

/** What the question needs of a graph, in whole numbers. */
export type BareRow =
  | { readonly is: "region"; readonly region: number; readonly above: number }
  | {
      readonly is: "lead";
      readonly s: number;
      readonly o: number;
      readonly id: number;
      readonly region: number | null;
    }
  | {
      readonly is: "date";
      readonly s: number;
      readonly id: number;
      readonly region: number | null;
      readonly lo: number;
      readonly hi: number;
    };

/** Regions with each one above them, themselves included; accepted leads; accepted dates. */
export function* bareRows(wishes: Wishes): Generator<BareRow> {
  const broader = new Map<number, number>();
  for (const { kind, thing } of makeGraph(wishes)) {
    if (kind === "term" && thing.kind === "region") {
      const region = numberOf(thing.id);
      if (thing.broader !== undefined) broader.set(region, numberOf(thing.broader));
      for (let above: number | undefined = region; above !== undefined; above = broader.get(above))
        yield { is: "region", region, above };
    }
    if (kind !== "claim" || thing.status !== "accepted" || !("subject" in thing) || !("scope" in thing))
      continue;
    const [s, id] = [numberOf(thing.subject), numberOf(thing.id)];
    const region = thing.scope.region === undefined ? null : numberOf(thing.scope.region);
    if (thing.relation === "requires")
      for (const target of new Set(thing.ways.flat()))
        yield { is: "lead", s, o: numberOf(target), id, region };
    const bound = boundOf(thing);
    if (bound !== undefined) yield { is: "date", s, id, region, lo: bound[0], hi: bound[1] };
  }
}
