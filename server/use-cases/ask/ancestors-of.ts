import type { TermId } from "../../domain/ids.ts";
import type { Term } from "../../domain/term.ts";

/**
 * The broader terms of a term, from the nearest to the top. `find` reads one term. Stops at a term met before, so
 * that it ends on a damaged tree too.
 */
export async function ancestorsOf<Found extends Term>(
  find: (id: TermId) => Promise<Found | undefined>,
  term: Term,
): Promise<Found[]> {
  const ancestors: Found[] = [];
  const met = new Set<TermId>([term.id]);
  for (let id = term.broader; id !== undefined && !met.has(id); ) {
    met.add(id);
    const broader = await find(id);
    if (broader) ancestors.push(broader);
    id = broader?.broader;
  }
  return ancestors;
}
