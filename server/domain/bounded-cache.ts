/** Remembers what was used lately. */
export interface BoundedCache<Key, Value> {
  get(key: Key): Value | undefined;
  set(key: Key, value: Value): void;
  delete(key: Key): void;
  clear(): void;
}

/**
 * A cache of at most `limit` values that forgets those not used lately. Two halves: when the young one is full it
 * becomes the old one, whose content is forgotten; what is found in the old half moves to the young.
 */
export function boundedCache<Key, Value>(limit: number): BoundedCache<Key, Value> {
  let young = new Map<Key, Value>();
  let old = new Map<Key, Value>();
  const set = (key: Key, value: Value): void => {
    if (young.size >= limit / 2) {
      old = young;
      young = new Map();
    }
    young.set(key, value);
  };
  return {
    get: (key) => {
      const found = young.get(key);
      if (found !== undefined) return found;
      const older = old.get(key);
      if (older !== undefined) {
        old.delete(key);
        set(key, older);
      }
      return older;
    },
    set,
    delete: (key) => {
      young.delete(key);
      old.delete(key);
    },
    clear: () => {
      young.clear();
      old.clear();
    },
  };
}
