import type { FindNamed } from "../use-cases/ask/say-edit.ts";
import type { Context } from "./context.ts";

/** What an edit names, through the loaders of a request. */
export const findNamed = ({ load }: Context): FindNamed => ({
  terms: (ids, at) => load.terms.many(ids, at),
  sources: (ids, at) => load.sources.many(ids, at),
});
