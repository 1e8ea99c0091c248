import type { ClaimId, ObservationId, PartId } from "#server/domain/ids.ts";
import type { GivenUp, Mends } from "#server/domain/weighing/mends.ts";
import type { MendsInWords } from "#server/domain/weighing/weighing-words.ts";

/** One way to save a part. */
export interface StoryOption {
  readonly key: string;
  readonly says: string;
  readonly price: string;
  readonly claims: readonly ClaimId[];
  /** Other rows that the same claim would save too, by name. */
  readonly alsoSaves: readonly string[];
}

export interface StoryRow {
  readonly key: string;
  readonly name: string;
  readonly options: readonly StoryOption[];
  readonly chosen: string;
}

/** What the chosen story does to a part or to a thing seen. */
export type Touch = "later" | "reused" | "reworked" | "doubted";

export interface Touched {
  readonly parts: ReadonlyMap<PartId, Touch>;
  readonly observations: ReadonlyMap<ObservationId, Touch>;
}

export const NOTHING_TOUCHED: Touched = { parts: new Map(), observations: new Map() };

export interface Story {
  readonly rows: readonly StoryRow[];
  /** The whole story as one sentence. */
  readonly says: string;
  /** How much is given up, in words; empty if nothing is. */
  readonly price: string;
  /** Whether it gives up just what the cheapest story does. */
  readonly isLeast: boolean;
  readonly touched: Touched;
}

const keyOf = (given: GivenUp): string => JSON.stringify(given);
const optionKey = (givenUp: readonly GivenUp[]): string => givenUp.map(keyOf).join();

const list = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Row = Mends["perPart"][number];

/** The option that the cheapest story takes of a row; the cheapest of the row where it takes none. */
const startingOption = (row: Row, best: ReadonlySet<string>) =>
  row.options.find(({ givenUp }) => givenUp.every((given) => best.has(keyOf(given)))) ?? row.options[0];

/** The story that the choices make; rows without a choice are as in the cheapest story. */
export function tellStory(
  mends: Mends,
  words: MendsInWords,
  choices: Readonly<Record<string, string>>,
): Story {
  const best = new Set(mends.best?.givenUp.map(keyOf) ?? []);
  const taken = mends.perPart.map((row, at) => {
    const key = `${mends.level} ${row.parts.join(" ")}`;
    const chosen =
      row.options.find(({ givenUp }) => optionKey(givenUp) === choices[key]) ?? startingOption(row, best);
    return { row, said: words.perPart[at], key, chosen };
  });
  const rows = taken.map(
    ({ row, said, key, chosen }, at): StoryRow => ({
      key,
      name: said?.name ?? "",
      chosen: optionKey(chosen?.givenUp ?? []),
      options: row.options.map(({ givenUp, shared }, n) => ({
        key: optionKey(givenUp),
        says: said?.options[n]?.says ?? "",
        price: said?.options[n]?.price ?? "",
        claims: said?.options[n]?.claims ?? [],
        alsoSaves: taken.flatMap((other, i) =>
          i !== at &&
          other.row.options.some((option) => shared.some((claim) => option.shared.includes(claim)))
            ? [other.said?.name ?? ""]
            : [],
        ),
      })),
    }),
  );
  const phrases = new Map(
    taken.flatMap(({ row, said, chosen }) => {
      const n = chosen === undefined ? -1 : row.options.indexOf(chosen);
      return (chosen?.givenUp ?? []).map(
        (given, i) => [keyOf(given), said?.options[n]?.given[i] ?? ""] as const,
      );
    }),
  );
  const isLeast = phrases.size === best.size && [...phrases.keys()].every((key) => best.has(key));
  return {
    rows,
    says: rows.length === 0 ? words.says : `${words.opening}: ${list([...phrases.values()])}.`,
    price: priceOf(rows),
    isLeast,
    touched: touchedBy(
      taken.flatMap(({ row, chosen }) => (chosen ? [{ row, givenUp: chosen.givenUp }] : [])),
    ),
  };
}

/** "Easily given up: the bracket feet and the top screws. At some cost: the two lower drawers." */
function priceOf(rows: readonly StoryRow[]): string {
  const byPrice = Map.groupBy(
    rows,
    ({ options, chosen }) => options.find(({ key }) => key === chosen)?.price ?? "",
  );
  return [...byPrice]
    .map(([price, some]) => `${capitalised(price)}: ${list(some.map(({ name }) => name))}.`)
    .join(" ");
}

/** Where several things are given up for one part, the one that changes it most is told. */
const STRONGEST: readonly Touch[] = ["later", "reused", "reworked", "doubted"];
const stronger = (a: Touch | undefined, b: Touch): Touch =>
  a !== undefined && STRONGEST.indexOf(a) < STRONGEST.indexOf(b) ? a : b;

function touchedBy(chosen: readonly { readonly row: Row; readonly givenUp: readonly GivenUp[] }[]): Touched {
  const parts = new Map<PartId, Touch>();
  const observations = new Map<ObservationId, Touch>();
  const touch = (all: readonly PartId[], how: Touch) => {
    for (const part of all) parts.set(part, stronger(parts.get(part), how));
  };
  for (const { row, givenUp } of chosen)
    for (const given of givenUp) {
      switch (given.kind) {
        case "later":
        case "reused":
          touch(given.parts, given.kind);
          break;
        case "altered":
          observations.set(given.observation, "reworked");
          touch(row.parts, "reworked");
          break;
        case "misread":
          observations.set(given.observation, "doubted");
          touch(row.parts, "doubted");
          break;
        default:
          touch(row.parts, "doubted");
      }
    }
  return { parts, observations };
}
