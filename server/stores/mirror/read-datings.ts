import { type DatingPath, type Datings, type DatingsAsk, labelOf } from "../../domain/datings.ts";
import type { ClaimId } from "../../domain/ids.ts";
import type { BoundOf } from "../../ports/dating-reader.ts";
import type { BodyReader } from "./body-reader.ts";
import type { ReadClaim } from "./read-neighbourhood.ts";
import { regionReach } from "./region-reach.ts";
import { PLACES, termWays, WIDTH } from "./term-ways.ts";
import { numberedAsk, walker } from "./walk.ts";
import { boundsOf, NO_TERM, type WalkArrays } from "./walk-arrays.ts";

/** Reads all ways to dates, of terms whose claims were read lately without the claims themselves. */
export interface DatingsReader {
  /** At once where all was read lately; undefined where the arrays were patched again and again while the store was asked. */
  read(ask: DatingsAsk): Datings | Promise<Datings | undefined>;
  /** Forgets what the claims about a term say. */
  forget(term: number): void;
}

/** Rows of ways that are kept, of some 60 bytes each. */
const MOST_ROWS = 300_000;
const TRIES = 3;
/** Some term that a way comes to was not read lately. */
const UNREAD = Symbol("unread");

export function datingsReader(
  arrays: WalkArrays,
  claims: BodyReader<ReadClaim>,
  boundOf: BoundOf,
  mostRows = MOST_ROWS,
): DatingsReader {
  const walk = walker(arrays);
  const ways = termWays(arrays, boundOf, mostRows);
  const reach = regionReach(arrays);

  const follow = (ask: DatingsAsk): Datings | typeof UNREAD => {
    const { features, region, claimed, maxDepth } = ask;
    const [earliest, latest] = claimed;
    ways.begin();
    reach.ask(region === undefined ? undefined : arrays.terms.find(region));
    const [places, numbers, ids] = [ways.places(), ways.numbers(), ways.claims];
    const via: ClaimId[] = [];
    const passed: number[] = [];
    let steps = 0;
    let isUnread = false;
    const from = (term: number, into: DatingPath[]): void => {
      if (steps++ >= ask.steps) return;
      const first = places[term * PLACES] as number;
      if (first === 0) {
        isUnread = true;
        return;
      }
      const lead = places[term * PLACES + 1] as number;
      const end = places[term * PLACES + 2] as number;
      let way: readonly ClaimId[] | undefined;
      for (let row = first - 1; row < lead; row++) {
        const at = row * WIDTH;
        if (!reach.isAbove(numbers[at] as number)) continue;
        way ??= via.slice();
        const isOut = (numbers[at + 2] as number) < earliest || (numbers[at + 1] as number) > latest;
        into.push({ via: way, dated: ids[row] as ClaimId, isOut });
      }
      if (via.length === maxDepth || lead === end) return;
      passed.push(term);
      for (let row = lead; row < end; row++) {
        const to = numbers[row * WIDTH + 1] as number;
        if (passed.includes(to) || !reach.isNear(numbers[row * WIDTH] as number)) continue;
        via.push(ids[row] as ClaimId);
        from(to, into);
        via.pop();
      }
      passed.pop();
    };
    const found: Datings["features"][number][] = [];
    for (const feature of features) {
      const paths: DatingPath[] = [];
      const number = arrays.terms.find(feature);
      if (number !== NO_TERM && arrays.stands[number] === 1) from(number, paths);
      else steps++;
      if (isUnread) return UNREAD;
      found.push({ feature, label: labelOf(paths), paths });
    }
    return { revision: arrays.revision, features: found, isCut: steps > ask.steps };
  };

  /** Reads all terms that the ask comes to of which nothing is kept; says whether they are the same yet. */
  const readUnread = async ({ features, region, maxDepth }: DatingsAsk): Promise<boolean> => {
    const { revision } = arrays;
    const regions = region === undefined ? [] : [region];
    const { reached, reachedCount } = walk(numberedAsk(arrays, { seeds: features, regions, maxDepth }));
    const unread = [...reached.subarray(0, reachedCount)].filter((term) => !ways.has(term));
    const stated = unread.map((term) =>
      arrays.statements.rows.slice(...boundsOf(arrays, arrays.statements, term)),
    );
    const read = await claims.read(Int32Array.from(stated.flatMap((numbers) => [...numbers])));
    if (arrays.revision !== revision) return false;
    let at = 0;
    for (const [i, term] of unread.entries()) {
      const begin = at;
      at += (stated[i] as Int32Array).length;
      ways.put(
        term,
        read.slice(begin, at).map(({ claim }) => claim),
      );
    }
    return true;
  };

  const readAnew = async (ask: DatingsAsk): Promise<Datings | undefined> => {
    for (let tries = 0; tries < TRIES; tries++) {
      ways.shrink();
      if (!(await readUnread(ask))) continue;
      const found = follow(ask);
      if (found !== UNREAD) return found;
    }
    return undefined;
  };

  return {
    read: (ask) => {
      const found = follow(ask);
      return found === UNREAD ? readAnew(ask) : found;
    },
    forget: ways.forget,
  };
}
