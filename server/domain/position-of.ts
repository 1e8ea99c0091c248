import type { TermId } from "./ids.ts";
import type { Move } from "./looking.ts";
import type { Position } from "./position.ts";
import { ancestors, type Broader } from "./region.ts";

/** From where a kind of part is looked at: as it stands, with what opens opened, and with the piece turned. */
interface Views {
  readonly standing: Position;
  readonly opened: Position;
  readonly turned: Position;
}

/** A face that shows itself, with an inner side and an underside to it: what a kind of part is unless named below. */
const FACE: Views = { standing: "front", opened: "drawers out", turned: "underneath" };

/** The other kinds of part. Kinds within a kind named here go with it, unless they are named themselves. */
const TABLE: readonly { readonly kinds: readonly string[]; readonly views: Views }[] = [
  {
    // Nothing of it is hidden by a drawer or a door.
    kinds: [
      ...["part.leg", "part.base", "part.stretcher", "part.arm", "part.splat", "part.crest-rail"],
      ...["part.spindle", "part.pillar", "part.carving", "part.leaf", "part.leaf-support"],
      ...["part.moulding", "part.pediment", "part.inlay", "part.apron", "part.castor"],
    ],
    views: { ...FACE, opened: "front" },
  },
  {
    kinds: [
      ...["part.drawer", "part.drawer-runner", "part.drawer-blade", "part.dustboard", "part.interior"],
      ...["part.lock", "part.shelf", "part.tray"],
    ],
    views: { standing: "drawers out", opened: "drawers out", turned: "drawers out" },
  },
  { kinds: ["part.drawer-front"], views: { ...FACE, turned: "drawers out" } },
  // What is inside a back can be seen from behind too, without drawing anything.
  { kinds: ["part.back"], views: { standing: "back", opened: "back", turned: "back" } },
  { kinds: ["part.label"], views: { ...FACE, standing: "back" } },
  {
    kinds: ["part.case-bottom", "part.corner-block", "part.webbing"],
    views: { ...FACE, standing: "underneath" },
  },
];

/** What there is to open on a piece, so that a look inside is possible. */
const OPENING = ["part.drawer", "part.door", "part.fall", "part.lid", "part.tray"];

/** Whether a piece with these kinds of part has anything that opens. */
export const hasOpening = (parts: readonly TermId[], broader: Broader): boolean =>
  parts.some((part) => ancestors(part, broader).some((kind) => OPENING.includes(kind)));

/**
 * From where a feature is looked for on a kind of part, by what has to be moved to see it (nothing, where that is not
 * known; what is unfastened or sampled changes no place). On a piece that has nothing to open, what would be seen inside is
 * looked for underneath.
 */
export function positionOf(
  part: TermId,
  move: Move | undefined,
  { broader, isOpening }: { readonly broader: Broader; readonly isOpening: boolean },
): Position {
  const { standing, opened, turned } = viewsOf(part, broader);
  const position = move === "drawer out" ? opened : move === "piece turned" ? turned : standing;
  return position === "drawers out" && !isOpening ? "underneath" : position;
}

function viewsOf(part: TermId, broader: Broader): Views {
  for (const kind of ancestors(part, broader)) {
    const row = TABLE.find(({ kinds }) => kinds.includes(kind));
    if (row) return row.views;
  }
  return FACE;
}
