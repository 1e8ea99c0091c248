import type { Choice } from "./components.ts";
import { type Item, type Items, priceIn } from "./items.ts";
import type { Stance } from "./stances.ts";

/** One case as a program in 0/1 variables, as the text that solvers read (the LP format of CPLEX). */
export interface IntegerProgram {
  readonly text: string;
  /** Things to give up by the name of their variable. */
  readonly items: ReadonlyMap<string, Item>;
}

/** Weight of each thing given up beside its price, so that of equal prices the fewest things are taken. */
const EACH = 0.001;

/**
 * Writes one place and one year of making: a variable for each thing that can be given up, for each stance of a unit, and for each treatment
 * of a sighting. A stance, a treatment and a bound need what they need; each unit has one stance. Any answer of least objective is a
 * cheapest set (M9).
 */
export function asIntegerProgram(choices: readonly Choice[], items: Items): IntegerProgram {
  const names = new Map<Item, string>();
  const others: string[] = [];
  const rules: string[] = [];
  const rule = (text: string): void => {
    rules.push(` r${rules.length}: ${text}`);
  };
  const nameOf = (item: Item): string => {
    const name = names.get(item) ?? `x${item}`;
    names.set(item, name);
    return name;
  };
  const variable = (kind: string): string => {
    const name = `${kind}${others.length}`;
    others.push(name);
    return name;
  };

  /** What holds if `chosen` is taken. */
  function take({ item, needs }: Stance, chosen: string): void {
    if (item !== undefined) rule(`${nameOf(item)} - ${chosen} >= 0`);
    for (const { treatments } of needs) {
      const ways = treatments.map((treatment) => ({ treatment, name: variable("w") }));
      rule(`${ways.map(({ name }) => name).join(" + ")} - ${chosen} >= 0`);
      for (const { treatment, name } of ways) {
        if (treatment.item !== undefined) rule(`${nameOf(treatment.item)} - ${name} >= 0`);
        for (const clause of treatment.clauses)
          rule(`${[...new Set(clause)].map(nameOf).join(" + ")} - ${name} >= 0`);
      }
    }
  }

  const originals = new Map<number, readonly string[]>();
  for (const { unit, stances } of choices) {
    const ways = stances.map((stance) => ({ stance, name: variable("s") }));
    rule(`${ways.map(({ name }) => name).join(" + ")} = 1`);
    for (const { stance, name } of ways) take(stance, name);
    originals.set(
      unit,
      ways.filter(({ stance }) => stance.item === undefined).map(({ name }) => name),
    );
  }
  for (const { unit, apart } of choices)
    for (const { unit: other, item } of apart) {
      const both = [...(originals.get(unit) ?? []), ...(originals.get(other) ?? [])];
      if (unit < other && both.length > 0) rule(`${nameOf(item)} - ${both.join(" - ")} >= -1`);
    }
  const weights = [...names].map(([item, name]) => `${priceIn(items.cost(item)) + EACH} ${name}`);
  return {
    text: [
      "Minimize",
      ` cost: ${weights.length > 0 ? weights.join(" + ") : "0 none"}`,
      "Subject To",
      ...(rules.length > 0 ? rules : [" r0: none >= 0"]),
      "Binary",
      ` ${[...names.values(), ...others, ...(weights.length > 0 ? [] : ["none"])].join(" ")}`,
      "End",
      "",
    ].join("\n"),
    items: new Map([...names].map(([item, name]) => [name, item])),
  };
}

/** Reads the answer of a solver back: the things whose variable is 1, ascending. Values are rounded, as solvers leave a small error. */
export const itemsTaken = (
  { items }: IntegerProgram,
  valueOfVariable: (variable: string) => number | undefined,
): readonly Item[] =>
  [...items]
    .flatMap(([name, item]) => ((valueOfVariable(name) ?? 0) > 0.5 ? [item] : []))
    .sort((a, b) => a - b);
