import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id, type TermId } from "#server/domain/ids.ts";
import { expectedParts, partsToLookAt } from "#server/domain/parts-of-form.ts";
import { broaderTerms } from "#server/domain/region.ts";
import type { Term } from "#server/domain/term.ts";
import { claimedYears } from "#server/reasoning/check.ts";
import { contextAt } from "#server/reasoning/context.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { type KnownGraph, knowGraph } from "#server/reasoning/known-graph.ts";
import { placesWithin } from "#server/reasoning/places.ts";
import { featuresByPart } from "#server/reasoning/sheet/draw-up-sheet.ts";
import { readChecks } from "#server/reasoning/sheet/read-checks.ts";
import { weighFeature } from "#server/reasoning/sheet/weigh-feature.ts";
import { type View, viewFrom } from "#server/reasoning/view.ts";
import { readSeedLines } from "#tests/seed/read-seed-lines.ts";
import { parseSeed } from "#tests/seed/seed-graph.ts";
import { largeGraph } from "#tests/support/large-graph.ts";

interface Asked {
  readonly form: TermId;
  readonly region?: TermId;
  readonly date?: string;
}

/** Holds every feature of a form's parts, weighed over the places it tells apart, against itself weighed over all places. */
function weighBothWays({ form, region, date }: Asked, terms: readonly Term[], graph: KnownGraph) {
  const ask = { form, ...(region === undefined ? {} : { region }) };
  const forms = new Map(terms.filter(({ kind }) => kind === "form").map((term) => [term.id, term]));
  const kinds = new Set(terms.filter(({ kind }) => kind === "part").map((term) => term.id));
  const parts = partsToLookAt(expectedParts(form, forms), (part) => kinds.has(part));
  const places = placesWithin(graph, region);
  const checksOn = inOneGo(readChecks(ask, parts, graph));
  const claimed = date === undefined ? undefined : claimedYears(date, ASSUMED);
  const views = new Map<string, View>();
  let [weighed, spared] = [0, 0];
  for (const [part, features] of featuresByPart(parts, terms, broaderTerms(terms))) {
    const { exceptions } = checksOn(part, form);
    const everywhere = places.map((place) => {
      const context = contextAt(graph, place, { form, part, exceptions });
      const view = views.get(context.key) ?? viewFrom(context, graph);
      views.set(context.key, view);
      return view;
    });
    for (const feature of features) {
      const check = checksOn(part, feature.id);
      const question = { graph, claimed, region };
      const told = inOneGo(weighFeature(check, question));
      expect(told, `${feature.id} on ${part}`).toEqual(
        inOneGo(weighFeature({ ...check, views: everywhere }, question)),
      );
      if (told !== undefined) weighed++;
      spared += places.length - check.views.length;
    }
  }
  return { weighed, spared };
}

describe("what a feature tells", () => {
  const asked = (form: string, region?: string, date?: string): Asked => ({
    form: id(form),
    ...(region === undefined ? {} : { region: id<"term">(region) }),
    ...(date === undefined ? {} : { date }),
  });
  const seed = parseSeed(readSeedLines());
  const seedGraph = knowGraph({ ...seed, cutAt: [] }, ASSUMED);

  it.each([
    asked("form.chest-of-drawers"),
    asked("form.side-chair", undefined, "1760/1775"),
    asked("form.desk-and-bookcase", "region.united-states", "1780"),
  ])("[F3] is the same by the places that it tells apart as by all places, on the seed graph: %o", (ask) => {
    const { weighed, spared } = weighBothWays(ask, seed.terms, seedGraph);
    expect(weighed).toBeGreaterThan(50);
    expect(spared).toBeGreaterThan(0);
  });

  it("[F3] is the same by the places that it tells apart as by all places, on a made-up graph", () => {
    const { terms, claims } = largeGraph(2_000);
    const graph = knowGraph({ terms, claims, cutAt: [] }, ASSUMED);
    const forms = terms.filter(({ kind, parts = [] }) => kind === "form" && parts.length > 1).slice(0, 2);
    for (const form of forms) {
      const { weighed, spared } = weighBothWays({ form: form.id }, terms, graph);
      expect(weighed).toBeGreaterThan(0);
      expect(spared).toBeGreaterThan(0);
    }
    expect(forms).toHaveLength(2);
  });
});
