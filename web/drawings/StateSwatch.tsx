import { useId } from "react";
import styles from "./FormDrawing.module.css";
import { Hatching } from "./Hatching.tsx";
import { type DrawnState, STATE_HATCHING } from "./state-hatching.ts";

/** A small piece of the hatching of a state, as it stands in drawings. */
export function StateSwatch({ state }: { state: DrawnState }) {
  const prefix = useId();
  return (
    <svg className={styles["swatch"]} width="24" height="14" viewBox="0 0 24 14" aria-hidden="true">
      <Hatching prefix={prefix} />
      <rect x="0.5" y="0.5" width="23" height="13" fill={`url(#${prefix}-${STATE_HATCHING[state]})`} />
      <rect x="0.5" y="0.5" width="23" height="13" className={styles["frame"]} />
    </svg>
  );
}
