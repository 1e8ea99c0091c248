import { ArraysDamaged } from "./arrays-damaged.ts";
import { bodyCache } from "./body-cache.ts";
import type { IdTable } from "./id-table.ts";
import type { WalkArrays } from "./walk-arrays.ts";

/** Gives bodies by their numbers, from the store where they were not read lately. */
export interface BodyReader<Body> {
  /** As they stood at the revision of the arrays when this was called, in the order asked for; `turn` is called between many. */
  read(numbers: Int32Array, turn?: () => Promise<void>): Promise<readonly Body[]>;
  forget(number: number): void;
}

/** Bodies that are asked of the store at once; others have a turn in between where it is time. */
const LOADED_AT_ONCE = 250;

/** `load` reads things at a revision, `make` what is kept of one; at most `limit` are. */
export function bodyReader<Thing extends { readonly id: string }, Body>(
  arrays: WalkArrays,
  table: IdTable,
  limit: number,
  load: (ids: readonly Thing["id"][], at: number) => Promise<ReadonlyMap<Thing["id"], Thing>>,
  make: (thing: Thing) => Body,
): BodyReader<Body> {
  const cache = bodyCache<Body>(limit, table.size);
  return {
    read: async (numbers, turn) => {
      const found = new Array<Body>(numbers.length);
      const missing: number[] = [];
      for (let place = 0; place < numbers.length; place++) {
        const body = cache.get(numbers[place] as number);
        if (body === undefined) missing.push(place);
        else found[place] = body;
      }
      if (missing.length === 0) return found;
      const { revision } = arrays;
      const ids = missing.map((place) => {
        const number = numbers[place] as number;
        if (number < 0 || number >= table.size) throw new ArraysDamaged("there is no such number");
        return table.idOf(number);
      });
      for (let from = 0; from < ids.length; from += LOADED_AT_ONCE) {
        if (from > 0) await turn?.();
        const asked = ids.slice(from, from + LOADED_AT_ONCE);
        const things = await load(asked, revision);
        for (const [i, id] of asked.entries()) {
          const place = missing[from + i] as number;
          const thing = things.get(id);
          if (thing === undefined) throw new ArraysDamaged(`${id} does not stand at revision ${revision}`);
          const body = make(thing);
          found[place] = body;
          // What was patched meanwhile may be another by now.
          if (arrays.revision === revision) cache.set(numbers[place] as number, body);
        }
      }
      return found;
    },
    forget: cache.forget,
  };
}
