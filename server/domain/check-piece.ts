import { checkGroups } from "./check-groups.ts";
import { checkOdds } from "./check-odds.ts";
import { checkPartTree } from "./check-part-tree.ts";
import type { Attribution, Piece } from "./examination.ts";
import type { TermId } from "./ids.ts";
import { findNearestTerm } from "./nearest-term.ts";
import { OBSERVED_KINDS } from "./observed-kinds.ts";
import { isProblem, type Problem, problem } from "./problem.ts";
import { readDating } from "./read-dating.ts";
import type { Term, TermKind } from "./term.ts";

/** Finds a term of the graph that the piece is to be examined on. */
export type FindTerm = (id: TermId) => Term | undefined;

/**
 * Everything that keeps a piece from being examined or kept, in the order of its fields. `candidates` are terms that an
 * unknown one might have been meant to be; the nearest is offered in `instead`. Rules [G25] to [G30] of
 * docs/spec/2-graph.md. The shape of the piece (types, lengths) is taken as checked.
 */
export function checkPiece(
  piece: Piece,
  findTerm: FindTerm,
  candidates: Iterable<Term> = [],
): readonly Problem[] {
  const named = termsNamedBy(piece);
  return [
    ...checkYears(piece.attribution, piece.examined),
    ...named.flatMap((name) => checkNamed(name, findTerm, candidates)),
    ...checkPartTree(piece.parts),
    ...checkObservations(piece),
    ...checkGroups(piece),
    ...checkOdds(piece),
  ];
}

function checkYears(attribution: Attribution, examined: number): readonly Problem[] {
  const dating = readDating(attribution.date, "event");
  if (isProblem(dating)) return [{ ...dating, path: ["attribution", "date"] }];
  if (!Number.isInteger(examined) || examined < 1 || examined > 9999)
    return [
      problem("WRONG_FORMAT", "The year of the examination must be a whole year from 1 to 9999.", [
        "examined",
      ]),
    ];
  if (examined >= dating.begin[0] - dating.padBegin) return [];
  return [
    problem(
      "WRONG_FORMAT",
      `The piece was examined in ${examined}, before the first year it is said to be of (${attribution.date}); correct the one or the other.`,
      ["examined"],
    ),
  ];
}

interface Named {
  readonly id: TermId | undefined;
  readonly as: string;
  readonly kinds: readonly TermKind[];
  readonly path: Problem["path"];
}

function termsNamedBy({ attribution, parts, observations }: Piece): readonly Named[] {
  const claimed = (["region", "form", "style", "maker"] as const).map((kind) => ({
    ...{ id: attribution[kind], as: `the ${kind} of the attribution`, kinds: [kind] },
    path: ["attribution", kind],
  }));
  const ofParts = parts.flatMap(({ kind, region, label }, i): Named[] => [
    { id: kind, as: `the kind of the part “${label}”`, kinds: ["part"], path: ["parts", i, "kind"] },
    { id: region, as: `the region of the part “${label}”`, kinds: ["region"], path: ["parts", i, "region"] },
  ]);
  const seen = observations.map(({ feature }, i): Named => {
    return {
      id: feature,
      as: `observation ${i + 1}`,
      kinds: OBSERVED_KINDS,
      path: ["observations", i, "feature"],
    };
  });
  return [...claimed, ...ofParts, ...seen];
}

function checkNamed(
  { id, as, kinds, path }: Named,
  findTerm: FindTerm,
  candidates: Iterable<Term>,
): readonly Problem[] {
  if (id === undefined) return [];
  const term = findTerm(id);
  if (term && kinds.includes(term.kind)) return [];
  if (term) {
    const wanted = kinds.length === 1 ? `a ${kinds[0]}` : `one of ${kinds.join(", ")}`;
    const message = `The term ${id} is a ${term.kind} and cannot be ${as}, which must be ${wanted}; choose another term.`;
    return [problem("WRONG_KIND_OF_TERM", message, path)];
  }
  const near = findNearestTerm(id, ofKinds(candidates, kinds));
  const advice = near ? `did you mean ${near.label} (${near.id})?` : "choose one that the graph knows.";
  return [problem("UNKNOWN_TERM", `There is no term ${id}, named as ${as}; ${advice}`, path, near?.id)];
}

function* ofKinds(terms: Iterable<Term>, kinds: readonly TermKind[]): Generator<Term> {
  for (const term of terms) if (kinds.includes(term.kind)) yield term;
}

function checkObservations({ parts, observations }: Piece): readonly Problem[] {
  const known = new Set(parts.map((part) => part.id));
  const seen = new Set<string>();
  return observations.flatMap(({ id, part }, i) => {
    const problems: Problem[] = [];
    if (seen.has(id))
      problems.push(
        problem("DUPLICATE_ID", `Two observations have the id ${id}; give observation ${i + 1} another.`, [
          "observations",
          i,
          "id",
        ]),
      );
    seen.add(id);
    if (!known.has(part))
      problems.push(
        problem(
          "UNKNOWN_PART",
          `Observation ${i + 1} is on the part ${part}, which the piece has not; add the part or choose another.`,
          ["observations", i, "part"],
        ),
      );
    return problems;
  });
}
