import type { Standing } from "../domain/graph-view.ts";
import {
  HUB_KINDS,
  hubNumbers,
  numbersOfKind,
  partNumbers,
  planGraph,
  regionNumbers,
  sourceNumbers,
  type Wishes,
} from "./graph-plan.ts";
import { makeClaims } from "./make-claims.ts";
import { makeSource } from "./make-source.ts";
import { makeTerm } from "./make-term.ts";
import type { Kind } from "./proportions.ts";
import { termsOfFamily, type World, worldOf } from "./world.ts";

/**
 * A made-up graph, thing by thing: regions, kinds of part and hubs, then family after family with its terms, sources and
 * claims. Each thing names only what came before it, but for look-alikes of its own family: written in this order, in
 * steps that end with a family, every step is a sound change. Nothing is kept but the tree of regions and the ids of
 * one family's claims.
 */
export function* makeGraph(wishes: Wishes): Generator<Standing> {
  const world = worldOf(planGraph(wishes));
  yield* makeShared(world);
  for (let family = 0; family < world.plan.families; family++) yield* makeFamily(world, family);
}

/** What all families name. */
export function* makeShared(world: World): Generator<Standing> {
  const { plan } = world;
  const regions = regionNumbers(plan);
  for (let number = regions.first; number < regions.end; number++)
    yield { kind: "term", thing: makeTerm(world, { kind: "region", number }, regions, 0) };
  const parts = partNumbers(plan);
  for (let number = parts.first; number < parts.end; number++)
    yield { kind: "term", thing: makeTerm(world, { kind: "part", number }, parts, 0) };
  const hubs = hubNumbers(plan);
  for (let number = hubs.first; number < hubs.end; number++) {
    const kind = HUB_KINDS[(number - hubs.first) % HUB_KINDS.length] as Kind;
    yield { kind: "term", thing: makeTerm(world, { kind, number }, { first: number, end: number }, 0) };
  }
}

/** One family: its terms, its sources, its claims. */
export function* makeFamily(world: World, family: number): Generator<Standing> {
  for (const ref of termsOfFamily(world.plan, family)) {
    const before = numbersOfKind(world.plan, family, ref.kind as Kind);
    yield { kind: "term", thing: makeTerm(world, ref, before, family) };
  }
  const sources = sourceNumbers(world.plan, family);
  for (let number = sources.first; number < sources.end; number++)
    yield { kind: "source", thing: makeSource(world, number, family) };
  for (const thing of makeClaims(world, family)) yield { kind: "claim", thing };
}
