import type { ObservationId, PartId } from "../../domain/ids.ts";
import type { Span, Year, Years } from "../../domain/years.ts";
import type { Held, Holding } from "../atoms.ts";
import type { Item, Items } from "./items.ts";
import type { Prices } from "./prices.ts";
import { fitsIn, spansOf } from "./spans.ts";
import { type Stance, stancesOf } from "./stances.ts";
import type { Pair, Sighting, Unit, Variant } from "./unit.ts";

/** What has to be given up so that everything bounded at one place holds: the same question for every year of making. */
export interface Puzzle {
  /** The same years, cut where anything does and at the ends of the claimed ones. */
  readonly spans: readonly Span[];
  readonly units: readonly Unit[];
  readonly pairs: readonly Pair[];
  /** What a unit can be in a year of making; each is worked out once. */
  readonly stancesIn: (unit: number, year: Year) => readonly Stance[];
}

/** A bound as a puzzle takes it: `held` names the observation and what can be given up, all else in it stays. */
export interface PuzzleWindow {
  readonly part: PartId | undefined;
  readonly years: Years;
  readonly held: Holding;
}

export interface Question {
  readonly windows: readonly PuzzleWindow[];
  /** Windows of parts from elsewhere, by the place there; one of its places each. */
  readonly torn?: readonly { readonly places: readonly (readonly PuzzleWindow[])[] }[];
  /** Parts together, in a fixed order; each part in one group. */
  readonly groups: readonly (readonly PartId[])[];
  readonly separate: readonly (readonly [PartId, PartId])[];
  readonly claimed: Span;
  readonly examined: Year;
}

/** Makes a puzzle of the windows of one place. */
export function puzzleOf(question: Question, prices: Prices, items: Items): Puzzle {
  const { windows, torn = [], groups, separate, claimed, examined } = question;
  const unitOf = new Map(groups.flatMap((parts, unit) => parts.map((part) => [part, unit] as const)));
  const number = (part: PartId): number => {
    const unit = unitOf.get(part);
    if (unit === undefined) throw new Error(`the part ${part} is in no group`);
    return unit;
  };
  const owner = ({ part }: PuzzleWindow): number => (part === undefined ? -1 : number(part));
  const byUnit = Map.groupBy(windows, owner);
  const tornBy = Map.groupBy(torn, ({ places }) => {
    const first = places.flat()[0];
    return first === undefined ? -1 : owner(first);
  });
  const variantsOf = (unit: number): readonly Variant[] =>
    (tornBy.get(unit) ?? [])
      .reduce<readonly (readonly PuzzleWindow[])[]>(
        (chosen, { places }) => chosen.flatMap((some) => places.map((here) => [...some, ...here])),
        [byUnit.get(unit) ?? []],
      )
      .map((all) => variantOf(all, examined, prices, items));
  const units: Unit[] = groups.map((parts, unit) => ({
    parts,
    later: items.add({ kind: "later", parts }, prices.later(parts)),
    reused: items.add({ kind: "reused", parts }, prices.reused(parts)),
    variants: variantsOf(unit),
  }));
  units.push({ parts: [], later: undefined, reused: undefined, variants: variantsOf(-1) });
  const everything = [...windows, ...torn.flatMap(({ places }) => places.flat())];
  const pairs = separate.flatMap((parts) => pairOf(parts, number, prices, items));
  return {
    spans: spansOf([[claimed], ...everything.map(({ years }) => years)], examined),
    units,
    pairs,
    stancesIn: stancesOf(units, pairs),
  };
}

function variantOf(windows: readonly PuzzleWindow[], examined: Year, prices: Prices, items: Items): Variant {
  const spans = spansOf(
    windows.map(({ years }) => years),
    examined,
  );
  return {
    spans,
    sightings: [...Map.groupBy(windows, nameOf)].map(([name, alike]) => ({
      name,
      ...sightingItems(alike[0] as PuzzleWindow, prices, items),
      bounds: alike.map(({ years, held }) => ({
        fits: fitsIn(years, spans),
        drops: held.flatMap((atom) => dropOf(atom, prices, items) ?? []),
      })),
    })),
  };
}

function pairOf(
  parts: readonly [PartId, PartId],
  number: (part: PartId) => number,
  prices: Prices,
  items: Items,
): readonly Pair[] {
  const [a, b] = parts.toSorted() as [PartId, PartId];
  const item = items.add({ kind: "not-separate", parts: [a, b] }, prices.separate);
  const units = [number(a), number(b)] as const;
  return item === undefined || units[0] === units[1] ? [] : [{ units, item }];
}

const observationIn = ({ held }: PuzzleWindow): ObservationId | undefined =>
  held.map(({ atom }) => (atom.kind === "observation" ? atom.observation : undefined)).find((id) => id);

/** Windows with one name are of one thing seen, or of one part of the claim. */
const nameOf = (window: PuzzleWindow): string =>
  observationIn(window) ?? window.held.find(({ atom }) => atom.kind === "attr")?.key ?? "";

function sightingItems(
  window: PuzzleWindow,
  prices: Prices,
  items: Items,
): Pick<Sighting, "misread" | "altered"> {
  const observation = observationIn(window);
  if (observation === undefined) return { misread: undefined, altered: undefined };
  return {
    misread: items.add({ kind: "misread", observation }, prices.misread(observation)),
    altered: items.add({ kind: "altered", observation }, prices.altered(observation)),
  };
}

function dropOf({ atom }: Held, prices: Prices, items: Items): Item | undefined {
  switch (atom.kind) {
    case "claim":
      return items.add(atom, prices.claim(atom.claim));
    case "rivals": {
      const each = atom.claims.map(prices.claim);
      const sum = each.reduce<number | undefined>(
        (all, price) => (all === undefined || price === undefined ? undefined : all + price),
        0,
      );
      return items.add(atom, sum);
    }
    case "assumption":
      return items.add(atom, prices.assumption);
    default:
      return undefined;
  }
}
