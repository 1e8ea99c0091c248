import type { PartId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";

/** Sets one of what is assumed of the whole; `undefined` is as assumed for all. */
export function withChosen<Key extends Exclude<keyof ChosenOdds, "parts">>(
  odds: ChosenOdds,
  key: Key,
  value: ChosenOdds[Key] | undefined,
): ChosenOdds {
  const { [key]: _before, ...rest } = odds;
  return value === undefined ? rest : { ...rest, [key]: value };
}

/** Sets the odds of parts that share one state; `undefined` is as assumed for parts of their kinds. */
export function withPartOdds(
  { parts = [], ...rest }: ChosenOdds,
  group: readonly PartId[],
  odds: PlainStateOdds | undefined,
): ChosenOdds {
  const others = parts.filter(({ part }) => !group.includes(part));
  const all = [...others, ...(odds === undefined ? [] : group.map((part) => ({ part, ...odds })))];
  return all.length > 0 ? { ...rest, parts: all } : rest;
}

/** What is chosen for a group of parts: of those that are together, the odds most often original count. */
export function chosenOf(odds: ChosenOdds, group: readonly PartId[]): PlainStateOdds | undefined {
  const [most] = (odds.parts ?? [])
    .filter(({ part }) => group.includes(part))
    .sort((a, b) => b.original - a.original);
  return most && { original: most.original, later: most.later, reused: most.reused };
}
