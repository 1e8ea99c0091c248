import aPlugAndAFinish from "#seed/lessons/a-plug-and-a-finish.json" with { type: "json" };
import aTopThatDidNotMove from "#seed/lessons/a-top-that-did-not-move.json" with { type: "json" };
import allHandWork from "#seed/lessons/all-hand-work.json" with { type: "json" };
import anOldBoardInANewChest from "#seed/lessons/an-old-board-in-a-new-chest.json" with { type: "json" };
import anotherSetOfHandles from "#seed/lessons/another-set-of-handles.json" with { type: "json" };
import arcsOnTheBack from "#seed/lessons/arcs-on-the-back.json" with { type: "json" };
import betweenTwoDates from "#seed/lessons/between-two-dates.json" with { type: "json" };
import carvingBelowTheFace from "#seed/lessons/carving-below-the-face.json" with { type: "json" };
import grainOfTheBottom from "#seed/lessons/grain-of-the-bottom.json" with { type: "json" };
import kerfsOnACurve from "#seed/lessons/kerfs-on-a-curve.json" with { type: "json" };
import ridgesUnderTheLeaves from "#seed/lessons/ridges-under-the-leaves.json" with { type: "json" };
import roughUnderTheGold from "#seed/lessons/rough-under-the-gold.json" with { type: "json" };
import roundInTheCorner from "#seed/lessons/round-in-the-corner.json" with { type: "json" };
import threeLongDrawers from "#seed/lessons/three-long-drawers.json" with { type: "json" };
import tipOfAScrew from "#seed/lessons/tip-of-a-screw.json" with { type: "json" };
import larkspurChair from "#seed/pieces/larkspur-chair.json" with { type: "json" };
import millraceChest from "#seed/pieces/millrace-chest.json" with { type: "json" };
import ropewalkTable from "#seed/pieces/ropewalk-table.json" with { type: "json" };
import saltmarshChest from "#seed/pieces/saltmarsh-chest.json" with { type: "json" };
import type { Piece } from "#server/domain/examination.ts";
import { type PieceFile, readPieceFile } from "../answers/read-piece-file.ts";
import type { Lesson } from "./lesson.ts";

/** Every lesson, in the order in which they are offered; those of one subject stand together. */
export const LESSONS = [
  arcsOnTheBack,
  kerfsOnACurve,
  ridgesUnderTheLeaves,
  allHandWork,
  roundInTheCorner,
  grainOfTheBottom,
  tipOfAScrew,
  betweenTwoDates,
  anotherSetOfHandles,
  aPlugAndAFinish,
  aTopThatDidNotMove,
  anOldBoardInANewChest,
  carvingBelowTheFace,
  roughUnderTheGold,
  threeLongDrawers,
] as unknown as readonly Lesson[];

export const findLesson = (id: string): Lesson | undefined => LESSONS.find((lesson) => lesson.id === id);

const DEMONSTRATIONS: readonly (PieceFile & { readonly id: string })[] = [
  larkspurChair,
  millraceChest,
  ropewalkTable,
  saltmarshChest,
];

/**
 * The piece of a lesson. A demonstration is taken as it comes with the program, whatever somebody did to the stored one
 * since.
 */
export function pieceOfLesson({ id, piece, demonstration }: Lesson): Piece {
  const file = piece ?? DEMONSTRATIONS.find((each) => each.id === demonstration);
  if (file === undefined) throw new TypeError(`The lesson ${id} has no piece`);
  return readPieceFile(file);
}
