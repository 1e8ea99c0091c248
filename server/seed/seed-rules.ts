import type { Citations } from "../domain/claim.ts";
import { type Problem, problem } from "../domain/problem.ts";
import type { Source } from "../domain/source.ts";
import type { Term } from "../domain/term.ts";
import type { Register } from "./read-register.ts";
import { type SeedLine, said } from "./seed-line.ts";

/** What rests on citations: a claim, or a row of a reference table. */
export interface Citing {
  readonly id: string;
  readonly citations: Citations;
  readonly row?: string;
}

/** Ids that stand twice, whatever the kinds and files. */
export function checkIdsOnce(lines: readonly SeedLine[]): readonly Problem[] {
  const seen = new Map<string, SeedLine>();
  return lines.flatMap((line) => {
    const first = seen.get(line.thing.id);
    if (first === undefined) seen.set(line.thing.id, line);
    return first === undefined
      ? []
      : [
          said(
            line,
            problem(
              "DUPLICATE_ID",
              `The id stands in ${first.file}, line ${first.line}, too; make one thing of the two, or give one another id.`,
              ["id"],
            ),
          ),
        ];
  });
}

/** Labels and other labels that name two things of one kind, whatever their capitals. */
export function checkLabelsOnce(terms: readonly SeedLine<Term>[]): readonly Problem[] {
  const seen = new Map<string, SeedLine<Term>>();
  return terms.flatMap((line) => {
    const { kind, label, otherLabels = [] } = line.thing;
    const labels: readonly (readonly [string, Problem["path"]])[] = [
      [label, ["label"]],
      ...otherLabels.map((other, i) => [other, ["otherLabels", i]] as const),
    ];
    return labels.flatMap(([text, path]) => {
      const key = `${kind} ${text.toLowerCase()}`;
      const first = seen.get(key);
      if (first === undefined) seen.set(key, line);
      return first === undefined
        ? []
        : [
            said(
              line,
              problem(
                "WRONG_FORMAT",
                `The ${kind} ${first.thing.id} (${first.file}, line ${first.line}) is called “${text}” already; give one of the two another label, or make one term of them.`,
                path,
              ),
            ),
          ];
    });
  });
}

/** Sources that nothing cites and that are no documented piece. */
export function checkSourcesCited(
  sources: readonly SeedLine<Source>[],
  citing: readonly SeedLine<Citing>[],
): readonly Problem[] {
  const cited = new Set<string>(
    citing.flatMap(({ thing }) =>
      thing.citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : [])),
    ),
  );
  return sources
    .filter(({ thing }) => !cited.has(thing.id) && thing.piece === undefined)
    .map((line) =>
      said(
        line,
        problem(
          "WRONG_FORMAT",
          "No claim and no table cites this source; cite it where it was read, or take it out.",
          ["id"],
        ),
      ),
    );
}

/** Citations that call published what the fact register knows only as common practice or from memory. */
export function checkBasisNotRaised(
  citing: readonly SeedLine<Citing>[],
  register: Register,
): readonly Problem[] {
  return citing.flatMap((line) => {
    const { row, citations } = line.thing;
    const basis = row === undefined ? undefined : register.get(row);
    if (basis === undefined || basis === "published") return [];
    return citations.flatMap((citation, i) =>
      citation.basis === "published"
        ? [
            said(
              line,
              problem(
                "WRONG_FORMAT",
                `The row ${row} of the fact register is ${basis}, and the citation raises it to published; write “${basis}”, or raise the row in register-rows.txt too once the text has been read.`,
                ["citations", i, "basis"],
              ),
            ),
          ]
        : [],
    );
  });
}
