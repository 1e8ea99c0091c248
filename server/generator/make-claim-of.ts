import type { Claim, Dated, Relation, Scope } from "../domain/claim.ts";
import { type ClaimId, id, type TermId } from "../domain/ids.ts";
import type { PartState } from "../domain/part-state.ts";
import { commonOf, type Wanted } from "./common-of-claim.ts";
import { partsOf } from "./make-term.ts";
import {
  ABSENCE_ONLY,
  ANYWHERE,
  CLOSED,
  CONFINED,
  type Kind,
  MEANS,
  OBJECTS,
  OF_HABIT,
  SCOPE_DEPTHS,
  SCOPES,
  STATES,
  TERMS_A_WAY,
  WAYS,
  WITH_CAUSE,
} from "./proportions.ts";
import { randomSourceOf } from "./random-source.ts";
import { atDepth, pickUneven } from "./region-tree.ts";
import { draw } from "./weighted.ts";
import { type DatedRelation, writeWhen } from "./when-shapes.ts";
import { lagTo, lifeOf, pickFeature, pickMeans, pickTerm, regionId, type TermRef, termId } from "./world.ts";

type Stating = Exclude<Relation, "void when">;

/** No year is later. */
const NEWEST = 2020;

export const claimId = (number: number): ClaimId => id(`claim.made-up-${String(number).padStart(7, "0")}`);

/** A claim of a relation about a term. `needs` is a term that it is to need, so that needs run in a circle. */
export function makeClaimOf(wanted: Wanted, relation: Stating, subject: TermRef, needs?: TermRef): Claim {
  const { world, random, family } = wanted;
  const { tree } = world;
  const life = lifeOf(world, subject);
  const base = { ...commonOf(wanted), subject: termId(subject) };
  const region = scopeRegion();
  const scope = scopeOf();
  switch (relation) {
    case "requires":
      return {
        ...{ ...base, relation, scope, hardness: "physical" },
        ...{ ways: waysOf(), closed: random.below(100) < CLOSED },
      };
    case "typical of":
      return { ...base, relation, scope, object: objectOf() };
    case "confined to": {
      const home = regionId(atDepth(tree, life.home, 2));
      const more = Array.from({ length: Number(draw(random, CONFINED)) - 1 }, () => regionId(anyRegion()));
      return { ...base, relation, scope, hardness: "practice", regions: [home, ...new Set(more)] };
    }
    case "not found in":
      return { ...base, relation, scope, hardness: "practice", when: datedBy(relation) };
    case "spread to": {
      const least = 2 + random.below(12);
      const [from, to] = [regionId(atDepth(tree, life.home, 2)), regionId(anyRegion())];
      return { ...base, relation, from, to, years: [least, least + random.below(20)] };
    }
    case "indicates": {
      const states = draw(random, STATES).split(" ") as [PartState, ...PartState[]];
      const cause = random.below(100) < WITH_CAUSE ? { cause: `made-up cause ${random.below(12)}` } : {};
      return { ...base, relation, scope, states, ...cause };
    }
    default:
      return { ...base, relation, scope, hardness: hardnessOf(relation), when: datedBy(relation) } as Claim;
  }

  function scopeRegion(): number {
    const depth = Number(draw(random, SCOPE_DEPTHS));
    return atDepth(tree, random.chance(0.75) ? life.home : anyRegion(), depth);
  }
  function anyRegion(): number {
    const deep = tree.byDepth[Math.min(tree.byDepth.length - 1, Number(draw(random, SCOPE_DEPTHS)))];
    return pickUneven(random, deep ?? [0]);
  }
  function scopeOf(): Scope {
    const named = draw(random, SCOPES).split(" ");
    const form = named.includes("form") ? pickTerm(random, world.plan, family, "form") : undefined;
    const isOfPart = named.includes("part") && subject.kind === "feature";
    return {
      ...(named.includes("region") ? { region: regionId(region) } : {}),
      ...(form === undefined || subject.kind === "form" ? {} : { form: termId(form) }),
      ...(isOfPart ? { part: random.pick(partsOf(world.plan, subject)) } : {}),
    };
  }
  function waysOf(): readonly (readonly TermId[])[] {
    const ways = Array.from({ length: Number(draw(random, WAYS)) }, () => [
      ...new Set(Array.from({ length: Number(draw(random, TERMS_A_WAY)) }, () => termId(meansOf()))),
    ]);
    return needs === undefined ? ways : [[termId(needs)], ...ways.slice(1)];
  }
  /**
   * Something older than what is made with it, as a rule. It is one of three, however often the needs of a thing are
   * told: many hands repeat each other.
   */
  function meansOf(): TermRef {
    const kinds = MEANS[subject.kind as Kind] ?? { material: 1 };
    const usual = randomSourceOf(world.plan.seed, 9, subject.number, random.skewed(3));
    let means: TermRef | undefined;
    for (let tries = 0; tries < 6; tries++) {
      const next = pickMeans(usual, world.plan, family, draw(usual, kinds));
      if (next === undefined || next.number === subject.number) continue;
      means = next;
      if (lifeOf(world, means).first <= life.first) break;
    }
    return means ?? subject;
  }
  function objectOf(): TermId {
    const kind = draw(random, OBJECTS);
    const object = kind === "region" ? undefined : pickTerm(random, world.plan, family, kind);
    return object === undefined ? regionId(region) : termId(object);
  }
  function hardnessOf(dated: Dated["relation"]): Dated["hardness"] {
    if (dated === "introduced" || dated === "discontinued")
      return random.below(100) < OF_HABIT[dated] ? "practice" : "physical";
    return dated === "attested" || dated === "active" ? "physical" : "practice";
  }
  /** Years as the life of the thing has them in the region, for the relation. */
  function datedBy(dated: DatedRelation): string {
    const lag = scope.region === undefined ? 0 : lagTo(world, life, region);
    const begin = Math.min(NEWEST, life.first + lag);
    const until = (year: number): number =>
      Math.min(NEWEST, Math.max(begin + 5, year + lag + random.below(8)));
    const within = (least: number, spread: number): string => {
      const first = Math.min(NEWEST, begin + least + random.below(spread));
      return writeWhen(random, dated, first, Math.min(NEWEST, first + random.below(20)));
    };
    switch (dated) {
      case "introduced":
        return within(0, 6);
      case "attested":
        return within(0, 60);
      case "common from":
        return within(5, 25);
      case "common until":
        return writeWhen(random, dated, until(life.usual - 8), until(life.usual + 8));
      case "discontinued": {
        const end = until(Math.min(life.last, NEWEST));
        return writeWhen(random, dated, end, Math.min(NEWEST, end + random.below(15)));
      }
      case "not found in":
        return writeWhen(random, dated, Math.max(1300, begin - 120), begin - 1);
      default:
        return writeWhen(random, dated, begin, until(life.usual));
    }
  }
}

/** An exception of a claim: a feature that makes it void. */
export function makeException(wanted: Wanted, of: ClaimId): Claim {
  const { world, random, family } = wanted;
  return {
    ...commonOf(wanted),
    ...{ relation: "void when", of, condition: termId(pickFeature(random, world.plan, family)) },
    anywhere: random.below(100) < ANYWHERE,
    ...(random.below(100) < ABSENCE_ONLY ? { absenceOnly: true } : {}),
  };
}
