import type { Claim } from "../../domain/claim.ts";
import type { Term } from "../../domain/term.ts";
import type { SearchFilter, SearchHit } from "../../ports/store.ts";
import { indexTerms, type TermSearch } from "../../search/term-search.ts";
import type { Database } from "./database.ts";
import { readMoment } from "./dump-database.ts";
import { standingThings } from "./read-things.ts";

/** The index of the terms of one revision, with its claims where a search was narrowed by them. */
interface Indexed {
  readonly revision: number;
  readonly search: TermSearch;
  claims?: readonly Claim[];
}

/** Searches the terms of the newest revision; they are indexed anew when another program or this one has changed the graph. */
export function termIndex(
  database: Database,
): (words: string, filter: SearchFilter, first: number) => Promise<readonly SearchHit[]> {
  let indexed: Promise<Indexed> | undefined;
  let of = -1;

  const build = async (revision: number): Promise<Indexed> => {
    const made: Indexed = {
      revision,
      search: indexTerms(await standingThings<Term>(database, "term", revision), () => made.claims ?? []),
    };
    return made;
  };
  return async (words, filter, first) => {
    const { revision } = await readMoment(database);
    if (indexed === undefined || of !== revision) {
      of = revision;
      indexed = build(revision);
      indexed.catch(() => {
        of = -1;
      });
    }
    const index = await indexed;
    if (filter.region !== undefined || filter.years !== undefined)
      index.claims ??= await standingThings<Claim>(database, "claim", index.revision);
    return index.search(words, filter, first);
  };
}
