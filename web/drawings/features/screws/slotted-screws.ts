import { line } from "../../pen.ts";
import { row } from "../curves.ts";
import { type Drawing, detail, edge, knife, says, span, tell } from "../mark.ts";
import { crests, fileStrokes, halfAt, latheRings, type Screw, screwMarks, slottedHead } from "./screw.ts";

const AXIS = 66;
const PLAN = { x: 184, y: 62, r: 42 } as const;
const BASE = { axis: AXIS, top: 14, head: 46, threadFrom: 92, foot: 218 } as const;

export const HAND_FILED: Screw = {
  ...BASE,
  shank: { top: 23, foot: 20 },
  pitch: 19,
  crest: { top: 20.5, foot: 15 },
  depth: 7,
  wander: 0.26,
  end: "blunt",
};

export const handFiledScrew: Drawing = {
  title: "Hand-filed screw",
  tells: "Thread of wandering pitch on a tapered shank, blunt end, file marks, slot a little off the middle.",
  draw: (level) => {
    const screw = level === "small" ? { ...HAND_FILED, pitch: 30, wander: 0.2 } : HAND_FILED;
    const [a, b, c] = crests(screw).slice(1) as [number, number, number];
    const at = AXIS + 32;
    return [
      ...screwMarks(screw),
      ...(level === "full"
        ? [detail(row(4, (i) => line([AXIS - 16 + 9 * i, 48], [AXIS - 12 + 8 * i, 82])))]
        : []),
      ...slottedHead(PLAN.x, PLAN.y, PLAN.r, 5, -6),
      ...(level === "full" ? [detail(fileStrokes(PLAN.x, PLAN.y, PLAN.r))] : []),
      span([at, a], [at, b]),
      span([at, b], [at, c]),
      tell([150, 214], [AXIS + 16, 218]),
      tell([222, 128], [PLAN.x + 26, PLAN.y + 9]),
    ];
  },
};

export const MACHINE_CUT: Screw = {
  ...BASE,
  shank: { top: 21, foot: 21 },
  pitch: 14,
  crest: { top: 21, foot: 21 },
  depth: 7,
  end: "blunt",
};

export const machineCutBluntScrew: Drawing = {
  title: "Machine-cut screw with a blunt end",
  tells: "Even thread on a parallel shank, lathe circles on the head, flat end.",
  draw: (level) => {
    const screw = level === "small" ? { ...MACHINE_CUT, pitch: 26 } : MACHINE_CUT;
    const [a, b, c] = crests(screw).slice(2) as [number, number, number];
    const at = AXIS + 32;
    return [
      ...screwMarks(screw),
      ...slottedHead(PLAN.x, PLAN.y, PLAN.r),
      detail(latheRings(PLAN.x, PLAN.y, PLAN.r, level === "small" ? 2 : 5)),
      span([at, a], [at, b]),
      span([at, b], [at, c]),
      tell([226, 22], [PLAN.x + 27, PLAN.y - 18]),
      tell([150, 226], [AXIS + 17, 219]),
    ];
  },
};

export const GIMLET: Screw = { ...MACHINE_CUT, pitch: 15, end: "gimlet" };

export const gimletPointScrew: Drawing = {
  title: "Gimlet-pointed screw",
  tells: "The thread runs out evenly to a sharp point.",
  draw: (level) => {
    const screw = level === "small" ? { ...GIMLET, pitch: 26 } : GIMLET;
    return [...screwMarks(screw), ...slottedHead(PLAN.x, PLAN.y, PLAN.r), tell([140, 222], [AXIS + 4, 220])];
  },
};

export const filedPointScrew: Drawing = {
  title: "Screw point with filed facets",
  tells: "A few flat facets, filed by hand, meet in the point; the thread stops short of it.",
  draw: (level) => {
    const screw: Screw = { ...HAND_FILED, foot: 200, pitch: level === "small" ? 28 : 19, end: "filed" };
    return [
      ...screwMarks(screw),
      edge(line([AXIS - 7, 194], [AXIS, 214], [AXIS + 5, 195])),
      ...slottedHead(PLAN.x, PLAN.y, PLAN.r, 3, 4),
      tell([140, 222], [AXIS + 8, 206]),
    ];
  },
};

export const ROLLED: Screw = {
  ...GIMLET,
  shank: { top: 14, foot: 14 },
  crest: { top: 23, foot: 21 },
  depth: 9,
};

export const rolledThreadScrew: Drawing = {
  title: "Screw with a rolled thread",
  tells: "The crests of the thread stand wider than the plain shank.",
  draw: (level) => {
    const screw = level === "small" ? { ...ROLLED, pitch: 26 } : ROLLED;
    const { shank } = ROLLED;
    const wide = halfAt(ROLLED, 110);
    return [
      ...screwMarks(screw),
      ...slottedHead(186, 168, 38),
      span([AXIS - shank.top, 58], [AXIS + shank.top, 58]),
      span([AXIS - wide, 118], [AXIS + wide, 118]),
      says(100, 62, "shank", "start"),
      says(100, 122, "thread", "start"),
    ];
  },
};

export const offCentreSlot: Drawing = {
  title: "Slot off the centre",
  tells: "The slot lies beside the middle of the head, or askew.",
  draw: () => [
    ...slottedHead(74, 120, 58, 13, -9),
    ...slottedHead(186, 120, 40),
    knife(line([16, 120], [132, 120]) + line([74, 62], [74, 178])),
    span([74, 120], [76, 133]),
    tell([110, 210], [92, 134]),
    says(186, 186, "true"),
  ],
};
