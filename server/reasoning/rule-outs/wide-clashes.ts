import { compareText, firstDifference } from "../../domain/compare.ts";
import type { RuleOut } from "../../domain/report.ts";
import { isEmpty, meet, type Years, yearsApart } from "../../domain/years.ts";
import type { Held } from "../atoms.ts";
import type { Subject } from "../check.ts";
import { type Clash, clashOf, DATE, originals } from "./clash.ts";
import { minimalConflicts, type Steps } from "./minimal-conflicts.ts";
import { leastPrice, type PriceOf } from "./price-of.ts";
import { type Alike, type TornLine, type WideLines, wideLines } from "./wide-lines.ts";
import { widelyClashing } from "./widely-clashing.ts";
import type { PlacedWindows, Window } from "./windows.ts";
import { addAll, isNone, keepCommon, meets, type YearBits } from "./year-line.ts";

/** What a search may cost over all places of a piece; counted down as it goes. */
export interface WideSteps extends Steps {
  /** Clashes put together. */
  clashes: number;
}

export interface WideClashes {
  readonly clashes: readonly Clash[];
  /** Findings among which there may be more. */
  readonly cut: readonly string[];
}

/** One member of the search: alike windows, or the claimed years; of a torn part, at one of its places. */
interface Member extends Alike {
  readonly price: number;
  readonly name: string;
  readonly at?: { readonly torn: number; readonly place: number };
}

/**
 * Clashes that take three windows or more, or a part torn between places (E27): a general search over what can stand in one. Members
 * are asked in the order of their price, the dearest first, so that an explanation keeps what one would least give up.
 */
export function wideClashes(
  placed: PlacedWindows,
  subject: Subject,
  priceOf: PriceOf,
  steps: WideSteps,
): WideClashes {
  const { claimed, piece } = subject;
  if (placed.torn.length === 0 && placed.windows.every(({ made }) => made.length < 2))
    return { clashes: [], cut: [] };
  const lines = wideLines(placed, claimed, piece.examined);
  const members = membersOf(lines, widelyClashing(lines), priceOf);
  if (members.length === 0) return { clashes: [], cut: [] };
  const clashes: Clash[] = [];
  const search = minimalConflicts(
    {
      size: members.length,
      holds: (chosen) => !isNone(yearsLeft(chosen, members, lines)),
      known: pairsApart(members),
    },
    steps,
  );
  let step = search.next();
  while (!step.done && steps.clashes > 0) {
    const conflict = step.value.map((i) => members[i] as Member);
    for (const windows of choicesOf(conflict)) {
      if (steps.clashes-- <= 0) break;
      clashes.push(clashOfMany(windows, conflict.includes(members.find(isClaimed) as Member), subject));
    }
    step = search.next();
  }
  const isThrough = step.done === true && step.value && steps.clashes >= 0;
  const findings = members.flatMap(({ windows }) => windows.map(({ check }) => check.id));
  return { clashes, cut: isThrough ? [] : [...new Set(findings)] };
}

const isClaimed = ({ windows }: Alike): boolean => windows.length === 0;

function membersOf(
  { claimed, fixed, torn }: WideLines,
  clashing: readonly Alike[],
  priceOf: PriceOf,
): readonly Member[] {
  if (clashing.length === 0 && torn.length === 0) return [];
  const memberOf = (alike: Alike, at?: Member["at"]): Member => ({
    ...alike,
    price: isClaimed(alike)
      ? Number.POSITIVE_INFINITY
      : Math.max(...alike.windows.map(({ held }) => leastPrice(held, priceOf))),
    name: `${alike.windows[0]?.held.map(({ key }) => key).join("\n")} ${at?.torn} ${at?.place}`,
    ...(at === undefined ? {} : { at }),
  });
  const chosen = new Set(clashing);
  return [
    ...[claimed, ...fixed].filter((alike) => chosen.has(alike)).map((alike) => memberOf(alike)),
    ...torn.flatMap(({ places }, i) =>
      places.flatMap((place, j) => place.map((alike) => memberOf(alike, { torn: i, place: j }))),
    ),
  ].sort((a, b) => firstDifference(compareNumbers(b.price, a.price), compareText(a.name, b.name)));
}

/** Infinite ones are alike. */
const compareNumbers = (a: number, b: number): number => (a === b ? 0 : a - b);

/** The years that some members leave together: of a torn part those of any of its places. */
function yearsLeft(
  chosen: readonly number[],
  members: readonly Member[],
  { line, torn }: WideLines,
): YearBits {
  const left = line.all.slice();
  const ofTorn: YearBits[][] = [];
  for (const i of chosen) {
    const { bits, at } = members[i] as Member;
    if (at === undefined) keepCommon(left, bits);
    else {
      const places = ofTorn[at.torn] ?? (torn[at.torn] as TornLine).places.map(() => line.all.slice());
      keepCommon(places[at.place] as YearBits, bits);
      ofTorn[at.torn] = places;
    }
  }
  for (const places of ofTorn) {
    if (places === undefined) continue;
    const either = new Uint32Array(left.length);
    for (const bits of places) addAll(either, bits);
    keepCommon(left, either);
  }
  return left;
}

/** Pairs that the pair method has found already. */
function pairsApart(members: readonly Member[]): readonly (readonly number[])[] {
  const pairs: (readonly number[])[] = [];
  for (const [i, a] of members.entries())
    for (let j = i + 1; j < members.length; j++) {
      const b = members[j] as Member;
      if (a.at === undefined && b.at === undefined && !meets(a.bits, b.bits)) pairs.push([i, j]);
    }
  return pairs;
}

/** One window of each member, in every way there is; the claimed years have none. */
function* choicesOf(members: readonly Member[]): Generator<readonly Window[]> {
  const [first, ...others] = members.filter((member) => !isClaimed(member));
  if (first === undefined) return;
  for (const window of first.windows) {
    if (others.length === 0) yield [window];
    else for (const rest of choicesOf(others)) yield [window, ...rest];
  }
}

function clashOfMany(windows: readonly Window[], isDated: boolean, subject: Subject): Clash {
  const found = originals(windows, subject);
  const isOfWhole = isDated || windows.some(({ part }) => part === undefined);
  const atoms: readonly Held[] = isOfWhole || found.length > 1 ? found : [];
  return clashOf(
    windows,
    isOfWhole ? "attribution" : against(windows),
    isDated ? [DATE, ...atoms] : atoms,
    isDated ? gapOf(windows, subject) : undefined,
  );
}

function against(windows: readonly Window[]): RuleOut["against"] {
  // No year anywhere in the part's own region: the claims exclude what is claimed of the whole, not a time.
  if (windows.every(({ years }) => isEmpty(years)) && windows.some(({ held }) => held.some(isAttribution)))
    return "attribution";
  return new Set(windows.map(({ part }) => part)).size > 1 ? "parts" : "observation";
}

const isAttribution = ({ atom }: Held): boolean => atom.kind === "attr";

/** How far what windows leave together is from the claimed years; of a part torn between places nothing so plain can be said. */
function gapOf(windows: readonly Window[], { claimed }: Subject): number | undefined {
  if (windows.some(({ check }) => check.elsewhere)) return undefined;
  const together = windows
    .map(({ made }) => made)
    .reduce<Years | undefined>((left, years) => (left === undefined ? years : meet(left, years)), undefined);
  return together === undefined ? undefined : yearsApart(together, [claimed]);
}
