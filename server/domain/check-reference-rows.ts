import { type Problem, problem } from "./problem.ts";
import type { ReferenceRow } from "./reference-row.ts";
import type { Source } from "./source.ts";
import type { Term } from "./term.ts";

/** Terms and sources by id, as far as they are known. */
export interface KnownThings {
  readonly terms: ReadonlyMap<string, Term>;
  readonly sources: ReadonlyMap<string, Source>;
}

/** What is wrong between rows of reference tables and the graph they speak of: ids twice, strangers, wrong kinds. */
export function checkReferenceRows(
  rows: readonly ReferenceRow[],
  { terms, sources }: KnownThings,
): readonly Problem[] {
  const seen = new Set<string>();
  return rows.flatMap((row) => {
    const twice = seen.has(row.id);
    seen.add(row.id);
    return [
      ...(twice ? [problem("DUPLICATE_ID", `${row.id} stands twice; give one of them another id.`)] : []),
      ...(terms.has(row.term) ? [] : [unknownTerm(row, row.term, ["term"])]),
      ...Object.entries(row.scope ?? {}).flatMap(([dimension, id]) => {
        const term = terms.get(id);
        if (!term) return [unknownTerm(row, id, ["scope", dimension])];
        return term.kind === dimension ? [] : [wrongKind(row, term, dimension)];
      }),
      ...row.citations.flatMap((citation, i) =>
        citation.basis === "published" && !sources.has(citation.source)
          ? [
              problem(
                "UNKNOWN_SOURCE",
                `${row.id} cites ${citation.source}, which is not there; add the source or correct its id.`,
                ["citations", i, "source"],
              ),
            ]
          : [],
      ),
    ];
  });
}

const unknownTerm = (row: ReferenceRow, id: string, path: Problem["path"]): Problem =>
  problem("UNKNOWN_TERM", `${row.id} names ${id}, which is not there; add the term or correct its id.`, path);

const wrongKind = (row: ReferenceRow, term: Term, dimension: string): Problem =>
  problem(
    "WRONG_KIND_OF_TERM",
    `${row.id} has the ${term.kind} ${term.id} as ${dimension}; name a ${dimension} there.`,
    ["scope", dimension],
  );
