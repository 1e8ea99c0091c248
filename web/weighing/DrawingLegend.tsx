import { memo } from "react";
import { PART_STATES } from "#server/domain/part-state.ts";
import { StateSwatch } from "#web/drawings/StateSwatch.tsx";
import type { DrawnState } from "#web/drawings/state-hatching.ts";
import { STATE_WORDS } from "#web/drawings/state-words.ts";
import styles from "./DrawingLegend.module.css";
import type { HatchedBy } from "./use-weighed-shapes.ts";
import { useTouched } from "./weighing-desk.ts";

const STATES = PART_STATES.map((state): readonly [DrawnState, string] => [state, STATE_WORDS[state]]);

/** What the hatchings of the drawing mean, as it is drawn now. */
export const DrawingLegend = memo(function DrawingLegend({ hatchedBy }: { hatchedBy: HatchedBy }) {
  const touched = useTouched();
  const dashes =
    hatchedBy !== "state" && touched.parts.size > 0 ? " Dashed outline: touched by the story chosen." : "";
  const drawn = "Drawn as a usual one of its form, not to measure.";
  if (hatchedBy === "evidence")
    return (
      <figcaption className={styles["legend"]}>
        Hatched: cannot be of the claimed years; broken lines: unusual; diamonds: sign of alteration; dots:
        not looked at.{dashes} {drawn}
      </figcaption>
    );
  const last: readonly [DrawnState, string] =
    hatchedBy === "state"
      ? ["untold", "nothing seen tells"]
      : ["doubted", "as old as claimed; a thing seen or a claim is doubted"];
  return (
    <figcaption className={styles["legend"]}>
      <ul className={styles["states"]} aria-label="What the hatchings mean">
        {[...STATES, last].map(([state, says]) => (
          <li key={state}>
            <StateSwatch state={state} /> {says}
          </li>
        ))}
      </ul>
      {hatchedBy === "state"
        ? "The figure is the probability of what is hatched; its range stands in the list part by part."
        : null}
      {dashes} {drawn}
    </figcaption>
  );
});
