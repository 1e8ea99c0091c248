import type { Claim, Relation } from "../domain/claim.ts";
import type { ClaimId } from "../domain/ids.ts";
import type { Wanted } from "./common-of-claim.ts";
import { claimNumbers, familyOf, howMany, numbersOfKind } from "./graph-plan.ts";
import { claimId, makeClaimOf, makeException } from "./make-claim-of.ts";
import { EXCEPTED, type Kind, RELATIONS, SUBJECTS } from "./proportions.ts";
import { type RandomSource, randomSourceOf } from "./random-source.ts";
import { draw } from "./weighted.ts";
import { pickAnyHub, type TermRef, type World } from "./world.ts";

type Stating = Exclude<Relation, "void when">;

/**
 * Claims about a hub, however large the graph is. Many need a hub, and are as many more in a larger graph; were as much
 * more told of it, and of what it needs, each piece that reaches it would reach more too.
 */
const CLAIMS_A_HUB = 24;
/** Of 100 needs, those that lead back to where another came from; never from a hub. */
const CIRCLES = 2;

/** All claims of a family, in the order of their numbers. An exception stands after the claim it is of. */
export function* makeClaims(world: World, family: number): Generator<Claim> {
  const { plan } = world;
  const random = randomSourceOf(plan.seed, 8, family);
  const { first, end } = claimNumbers(plan, family);
  const made = new Map<Relation, ClaimId[]>();
  const subjects = subjectsOf(world, family, random);
  let back: { readonly from: TermRef; readonly to: TermRef } | undefined;
  for (let number = first; number < end; number++) {
    const wanted: Wanted = { world, random, family, id: claimId(number) };
    const claim = nextClaim(wanted);
    const before = made.get(claim.relation);
    if (before === undefined) made.set(claim.relation, [claim.id]);
    else before.push(claim.id);
    yield claim;
  }

  function nextClaim(wanted: Wanted): Claim {
    const relation = draw(random, RELATIONS);
    if (relation === "void when") {
      const of = made.get(draw(random, EXCEPTED));
      if (of !== undefined) return makeException(wanted, random.pick(of));
    }
    const stated = relation === "void when" ? "attested" : relation;
    const kind = draw(random, SUBJECTS[stated]);
    const subject = subjects.next(howMany(numbersOfKind(plan, family, kind)) > 0 ? kind : "feature", stated);
    if (stated !== "requires") return makeClaimOf(wanted, fitting(stated, subject), subject);
    if (back !== undefined) {
      const { from, to } = back;
      back = undefined;
      return makeClaimOf(wanted, "requires", from, to);
    }
    const claim = makeClaimOf(wanted, "requires", subject);
    const to = claim.relation === "requires" ? refOf(claim.ways[0]?.[0] ?? "") : undefined;
    if (to !== undefined && familyOf(plan, to.number) >= 0 && random.below(100) < CIRCLES)
      back = { from: to, to: subject };
    return claim;
  }
}

/** A small family may lack the kind that a relation is about. */
const fitting = (relation: Stating, { kind }: TermRef): Stating =>
  relation === "active" && kind !== "maker" ? "attested" : relation;

function refOf(term: string): TermRef | undefined {
  const [, kind, number] = /^(.*)\.made-up-(\d+)$/.exec(term) ?? [];
  return kind === undefined ? undefined : { kind: kind as Kind, number: Number(number) };
}

/**
 * Whom the next claim is about. Two of three times one about whom nothing was said yet, while there is one: hardly any
 * term of the seed is without a claim. Else the early ones of the kind more often; but what means need is told of each
 * as often and of no hub, so that chains of needs stay as short as they are in the seed.
 */
function subjectsOf(world: World, family: number, random: RandomSource) {
  const { plan } = world;
  const unsaid = new Map<Kind, number>();
  const hubs = (plan.hubs * CLAIMS_A_HUB) / plan.claims;
  return {
    next(kind: Kind, relation: Stating): TermRef {
      const numbers = numbersOfKind(plan, family, kind);
      if (relation === "requires" && kind !== "feature")
        return { kind, number: numbers.first + random.below(howMany(numbers)) };
      const hub = random.chance(hubs) ? pickAnyHub(random, plan, kind) : undefined;
      if (hub !== undefined) return hub;
      const said = unsaid.get(kind) ?? 0;
      if (said < howMany(numbers) && random.chance(0.66)) {
        unsaid.set(kind, said + 1);
        return { kind, number: numbers.first + said };
      }
      return { kind, number: numbers.first + random.skewed(howMany(numbers)) };
    },
  };
}
