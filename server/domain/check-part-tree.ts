import type { Part } from "./examination.ts";
import type { PartId } from "./ids.ts";
import { type Problem, problem } from "./problem.ts";

/** Parts with ids of their own, each within a part that is there, and none within itself by any way. */
export function checkPartTree(parts: readonly Part[]): readonly Problem[] {
  const byId = new Map(parts.map((part) => [part.id, part]));
  const seen = new Set<PartId>();
  return parts.flatMap((part, i) => {
    const isSecond = seen.has(part.id);
    seen.add(part.id);
    if (isSecond)
      return [
        problem("DUPLICATE_ID", `Two parts have the id ${part.id}; give “${part.label}” another.`, [
          "parts",
          i,
          "id",
        ]),
      ];
    return checkWithin(part, byId, ["parts", i, "within"]);
  });
}

function checkWithin(part: Part, byId: ReadonlyMap<PartId, Part>, path: Problem["path"]): readonly Problem[] {
  if (part.within === undefined) return [];
  if (!byId.has(part.within))
    return [
      problem(
        "UNKNOWN_PART",
        `The part “${part.label}” is within ${part.within}, which the piece has not; add that part or choose another.`,
        path,
      ),
    ];
  const way = wayBack(part, byId);
  if (!way) return [];
  const by =
    way.length > 1
      ? `, by way of ${way
          .slice(0, -1)
          .map((on) => `“${on.label}”`)
          .join(", ")}`
      : "";
  return [
    problem(
      "PART_OF_ITSELF",
      `The part “${part.label}” is within itself${by}; put it within another part or none.`,
      path,
    ),
  ];
}

/** The parts passed on the way from a part to itself, if it lies on such a way. */
function wayBack(start: Part, byId: ReadonlyMap<PartId, Part>): readonly Part[] | undefined {
  const way: Part[] = [];
  for (
    let part = start.within && byId.get(start.within);
    part && !way.includes(part);
    part = part.within && byId.get(part.within)
  ) {
    way.push(part);
    if (part.id === start.id) return way;
  }
  return undefined;
}
