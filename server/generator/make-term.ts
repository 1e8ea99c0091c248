import type { TermId } from "../domain/ids.ts";
import { AIDS, type LookAlike, type Looking, MOVES } from "../domain/looking.ts";
import type { Term } from "../domain/term.ts";
import type { GraphPlan, Numbers } from "./graph-plan.ts";
import { BROADER, type Kind, LENGTHS, OTHER_LABELS, PARTS_OF_FEATURE, PARTS_OF_FORM } from "./proportions.ts";
import { type RandomSource, randomSourceOf } from "./random-source.ts";
import { drawBetween } from "./weighted.ts";
import { labelOf, textOf } from "./words.ts";
import { partId, pickTerm, regionId, type TermRef, termId, type World } from "./world.ts";

const ROUND_ABOUT = { how: 190, apart: 70, innocent: 95 };

/** The term with its label, notes and parts. `before` are numbers of its kind from which a broader one may be taken. */
export function makeTerm({ plan, tree }: World, ref: TermRef, before: Numbers, family: number): Term {
  const { kind, number } = ref;
  const random = randomSourceOf(plan.seed, 5, number);
  const isMade = kind !== "region" && kind !== "part";
  return {
    id: termId(ref),
    kind,
    label: labelOf(random, kind, number, LENGTHS.label),
    ...(random.below(100) < (OTHER_LABELS[kind] ?? 0)
      ? { otherLabels: [labelOf(random, kind, number, LENGTHS.label).replace("made-up", "also made-up")] }
      : {}),
    note: textOf(random, drawBetween(random, LENGTHS.note)),
    ...broaderOf(),
    ...(kind === "feature" ? { looking: lookingFor(random, plan, family) } : {}),
    ...(kind === "feature" || kind === "form" ? { parts: partsOf(plan, ref) } : {}),
  };

  function broaderOf(): { readonly broader?: TermId } {
    if (kind === "region") return number === 0 ? {} : { broader: regionId(tree.above[number] as number) };
    if (number === before.first || random.below(100) >= (BROADER[kind] ?? 0)) return {};
    const above = before.first + (isMade ? random.skewed : random.below)(number - before.first);
    return { broader: termId({ kind, number: above }) };
  }
}

/** Kinds of part that a feature is looked for on, or that a form has. */
export function partsOf(plan: GraphPlan, { kind, number }: TermRef): readonly TermId[] {
  const random = randomSourceOf(plan.seed, 6, number);
  const count = drawBetween(random, kind === "form" ? PARTS_OF_FORM : PARTS_OF_FEATURE);
  const places = new Set<number>();
  while (places.size < Math.min(count, plan.parts)) places.add(random.skewed(plan.parts));
  return [...places].map((place) => partId(plan, place));
}

function lookingFor(random: RandomSource, plan: GraphPlan, family: number): Looking {
  const about = (length: number): number => Math.round(length * (0.6 + random.below(9) / 10));
  const alike = (): LookAlike => {
    const term = pickTerm(random, plan, family, "feature" satisfies Kind);
    return {
      what: textOf(random, 30, "something made up"),
      ...(term !== undefined && random.chance(0.6) ? { term: termId(term) } : {}),
      apart: textOf(random, about(ROUND_ABOUT.apart), ""),
    };
  };
  return {
    how: textOf(random, about(ROUND_ABOUT.how)),
    move: MOVES[random.skewed(MOVES.length)] as (typeof MOVES)[number],
    aids: AIDS.filter(() => random.chance(0.2)),
    mistakenFor: Array.from({ length: 1 + random.below(2) }, alike),
    innocent: textOf(random, about(ROUND_ABOUT.innocent), ""),
    basis: random.chance(0.8) ? "common practice" : "from memory",
  };
}
