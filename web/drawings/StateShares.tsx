import { useId } from "react";
import { PART_STATES } from "#server/domain/part-state.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import styles from "./FormDrawing.module.css";
import { Hatching } from "./Hatching.tsx";
import { STATE_HATCHING } from "./state-hatching.ts";
import { STATE_WORDS } from "./state-words.ts";

const WIDTH = 240;
const HEIGHT = 16;

/** What a part may be, as one bar that the states share by their probability, hatched as in drawings; said in its name. */
export function StateShares({ odds, of }: { odds: StateOdds; of: string }) {
  const prefix = useId();
  const says = PART_STATES.map((state) => `${odds[state].toFixed(2)} ${STATE_WORDS[state]}`);
  let from = 0.5;
  return (
    <svg
      className={styles["swatch"]}
      width={WIDTH + 1}
      height={HEIGHT + 1}
      viewBox={`0 0 ${WIDTH + 1} ${HEIGHT + 1}`}
      role="img"
      aria-label={`${of}: ${says.join("; ")}`}
    >
      <Hatching prefix={prefix} />
      {PART_STATES.map((state) => {
        const at = { x: from, y: 0.5, width: odds[state] * WIDTH, height: HEIGHT };
        from += at.width;
        return (
          <g key={state}>
            <rect {...at} fill={`url(#${prefix}-${STATE_HATCHING[state]})`} />
            <rect {...at} className={styles["frame"]} />
          </g>
        );
      })}
    </svg>
  );
}
