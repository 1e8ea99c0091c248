import { isSame } from "../is-same.ts";
import { type Conflict, mergeMembers, type Three } from "./merge-value.ts";

type Identified = { readonly id: string };
type Lists<Item> = {
  readonly base: readonly Item[];
  readonly mine: readonly Item[];
  readonly theirs: readonly Item[];
};

/**
 * Merges lists of things with ids. What one added is added, what one changed is changed member by member, what one took away is
 * taken away unless the other changed it meanwhile.
 */
export function mergeLists<Item extends Identified>(
  { base, mine, theirs }: Lists<Item>,
  path: readonly string[],
  tell: (conflict: Conflict) => void,
): readonly Item[] {
  const [before, own, other] = [base, mine, theirs].map(
    (list) => new Map(list.map((item) => [item.id, item])),
  );
  const kept = new Map<string, Item>();
  for (const id of orderOf({ base, mine, theirs })) {
    const item = mergeItem(
      { base: before?.get(id), mine: own?.get(id), theirs: other?.get(id) },
      [...path, id],
      tell,
    );
    if (item !== undefined) kept.set(id, item);
  }
  return [...kept.values()];
}

function mergeItem<Item extends object>(
  { base, mine, theirs }: Three<Item>,
  path: readonly string[],
  tell: (conflict: Conflict) => void,
): Item | undefined {
  if (mine !== undefined && theirs !== undefined)
    return mergeMembers({ base: base ?? ({} as Item), mine, theirs }, path, tell);
  if (base === undefined) return mine ?? theirs;
  const left = mine ?? theirs;
  if (left === undefined || isSame(left, base)) return undefined;
  tell({ path, base, ...(mine === undefined ? { theirs } : { mine }) });
  return left;
}

/** Merges lists of groups, where only which groups there are counts. */
export function mergeGroups<Group extends readonly string[]>({
  base,
  mine,
  theirs,
}: Lists<Group>): readonly Group[] {
  const key = (group: Group): string => [...group].sort().join(" ");
  const [before, own, other] = [base, mine, theirs].map((list) => new Set(list.map(key)));
  const isKept = (group: Group): boolean =>
    before?.has(key(group)) ? own?.has(key(group)) === true && other?.has(key(group)) === true : true;
  const merged = new Map([...theirs, ...mine].filter(isKept).map((group) => [key(group), group]));
  return [...merged.values()];
}

/** The ids of all in the order of whoever put them in another one, mine if both did; what the other added follows what it stood behind. */
function orderOf<Item extends Identified>({ base, mine, theirs }: Lists<Item>): readonly string[] {
  const ids = (list: readonly Item[]): readonly string[] => list.map(({ id }) => id);
  const shared = new Set(ids(base).filter((id) => ids(mine).includes(id) && ids(theirs).includes(id)));
  const among = (list: readonly Item[]): readonly string[] => ids(list).filter((id) => shared.has(id));
  const [lead, follow] = isSame(among(mine), among(base)) ? [theirs, mine] : [mine, theirs];
  const order = [...ids(lead)];
  for (const [place, id] of ids(follow).entries()) {
    if (order.includes(id)) continue;
    const before = ids(follow)
      .slice(0, place)
      .findLast((each) => order.includes(each));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, id);
  }
  return order;
}
