import type { Piece } from "./examination.ts";
import type { PartId } from "./ids.ts";
import { type Problem, problem } from "./problem.ts";

/** Groups `together` and pairs `separate`: of parts that are there, and not of the same two, by whatever way joined. */
export function checkGroups({ parts, together, separate }: Piece): readonly Problem[] {
  const known = new Set(parts.map((part) => part.id));
  const labelOf = new Map(parts.map((part) => [part.id, part.label]));
  const groupOf = joined(together);
  return [
    ...together.flatMap((group, i) => checkGroup(group, known, ["together", i])),
    ...separate.flatMap((pair, i) => {
      const missing = checkMembers(pair, known, ["separate", i]);
      const [a, b] = pair;
      if (missing.length > 0) return missing;
      if (a === b)
        return [
          problem(
            "TOGETHER_AND_SEPARATE",
            `The part “${labelOf.get(a)}” cannot be separate from itself; name two parts.`,
            ["separate", i],
          ),
        ];
      const group = groupOf.get(a);
      if (group === undefined || group !== groupOf.get(b)) return [];
      return [
        problem(
          "TOGETHER_AND_SEPARATE",
          `The parts “${labelOf.get(a)}” and “${labelOf.get(b)}” are said to be of one origin and of two; take back the one or the other.`,
          ["separate", i],
        ),
      ];
    }),
  ];
}

function checkGroup(
  group: readonly PartId[],
  known: ReadonlySet<PartId>,
  path: Problem["path"],
): readonly Problem[] {
  if (new Set(group).size < 2)
    return [
      problem(
        "EMPTY_LIST",
        "Parts of one origin are at least two different parts; add another or drop the group.",
        path,
      ),
    ];
  return checkMembers(group, known, path);
}

const checkMembers = (
  members: readonly PartId[],
  known: ReadonlySet<PartId>,
  path: Problem["path"],
): readonly Problem[] =>
  members.flatMap((part, i) =>
    known.has(part)
      ? []
      : [
          problem(
            "UNKNOWN_PART",
            `The part ${part} is grouped, but the piece has no such part; add it or drop it here.`,
            [...path, i],
          ),
        ],
  );

/** The group of each part, groups that share a part being one. */
function joined(groups: readonly (readonly PartId[])[]): ReadonlyMap<PartId, symbol> {
  const groupOf = new Map<PartId, symbol>();
  for (const group of groups) {
    const name = Symbol();
    const merged = new Set(group.map((part) => groupOf.get(part)).filter((old) => old !== undefined));
    for (const [part, old] of groupOf) if (merged.has(old)) groupOf.set(part, name);
    for (const part of group) groupOf.set(part, name);
  }
  return groupOf;
}
