import { deepFreeze } from "../../domain/deep-freeze.ts";
import { StoreFailed } from "../../ports/store-failed.ts";
import { storeCorrupt } from "./find-medium-problem.ts";

/** A stored text of JSON as a value that can be shared. Throws `StoreFailed` where it is none: the file was damaged. */
export function parseStored<Value>(text: string): Value {
  try {
    return deepFreeze(JSON.parse(text) as Value);
  } catch (failure) {
    throw new StoreFailed(storeCorrupt("a row does not hold what was written"), failure);
  }
}
