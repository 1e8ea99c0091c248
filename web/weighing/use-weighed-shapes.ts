import { useMemo } from "react";
import type { PartId } from "#server/domain/ids.ts";
import type { Drawn } from "#web/drawings/FormDrawing.tsx";
import { datesOf, likeliestOf } from "./likeliest.ts";
import type { Touch } from "./tell-story.ts";
import { useTouched, useWeighed } from "./weighing-desk.ts";

/** By what the drawing of the piece is hatched: what speaks against each part, what it most probably is, or the story chosen. */
export type HatchedBy = "evidence" | "state" | "story";

export const HATCHED_BY: readonly { readonly id: HatchedBy; readonly label: string }[] = [
  { id: "evidence", label: "what speaks against it" },
  { id: "state", label: "what it most probably is" },
  { id: "story", label: "the story chosen" },
];

export const TOUCH_WORDS: Readonly<Record<Touch, string>> = {
  later: "made later, in the story chosen",
  reused: "from an earlier piece, in the story chosen",
  reworked: "worked over since, in the story chosen",
  doubted: "as old as claimed, in the story chosen; what is known of it is doubted",
};

export interface WeighedShapes {
  /** What is said of a part; undefined where the examination says it. */
  readonly says: (part: PartId) => string | undefined;
  /** How a shape that stands for the parts is drawn, beside what the examination makes of it. */
  readonly drawn: (parts: readonly PartId[]) => Partial<Drawn>;
}

const TOUCH_ORDER: readonly Touch[] = ["later", "reused", "reworked", "doubted"];

/** How the shapes of the drawing are to be drawn by what was weighed. Of several parts in one shape the one least likely to be old counts. */
export function useWeighedShapes(hatchedBy: HatchedBy): WeighedShapes {
  const { weighed } = useWeighed();
  const touched = useTouched();
  const { dates } = weighed.weighing;
  const said = weighed.words.parts;
  return useMemo<WeighedShapes>(() => {
    const isTouched = (parts: readonly PartId[]) => parts.some((part) => touched.parts.has(part));
    switch (hatchedBy) {
      case "evidence":
        return {
          says: () => undefined,
          drawn: (parts) => (isTouched(parts) ? { isTouched: true } : {}),
        };
      case "state":
        return {
          says: (part) => said?.find(({ parts }) => parts.includes(part))?.brief,
          drawn: (parts) => {
            const [part] = parts.toSorted((a, b) => originalOf(a) - originalOf(b));
            const state = likeliestOf(dates, part === undefined ? [] : [part]);
            const odds = datesOf(dates, part)?.odds;
            return state === "untold" || odds === undefined
              ? { state: "untold" }
              : { state, figure: odds[state] > 0.99 ? ">0.99" : odds[state].toFixed(2) };
          },
        };
      case "story":
        return {
          says: (part) => {
            const touch = touched.parts.get(part);
            return touch === undefined ? "as claimed, in the story chosen" : TOUCH_WORDS[touch];
          },
          drawn: (parts) => {
            const how = TOUCH_ORDER.find((touch) => parts.some((part) => touched.parts.get(part) === touch));
            return how === undefined ? { state: "original" } : { state: how, isTouched: true };
          },
        };
    }
    function originalOf(part: PartId): number {
      return datesOf(dates, part)?.odds.original ?? 1;
    }
  }, [hatchedBy, dates, said, touched]);
}
