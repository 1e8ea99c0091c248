import styles from "./FormDrawing.module.css";
import type { Dimension } from "./shape.ts";

const TICK = 3;

/** A dimension line with end ticks and the name of the measure at its middle. */
export function DimensionMark({ along, from, to, at, says }: Dimension) {
  const middle = (from + to) / 2;
  if (along === "x")
    return (
      <g>
        <path
          d={`M${from} ${at}H${to}M${from} ${at - TICK}v${2 * TICK}M${to} ${at - TICK}v${2 * TICK}`}
          className={styles["dimension"]}
        />
        <text x={middle} y={at - 4} textAnchor="middle" className={styles["says"]}>
          {says}
        </text>
      </g>
    );
  return (
    <g>
      <path
        d={`M${at} ${from}V${to}M${at - TICK} ${from}h${2 * TICK}M${at - TICK} ${to}h${2 * TICK}`}
        className={styles["dimension"]}
      />
      <text
        x={at - 4}
        y={middle}
        textAnchor="middle"
        transform={`rotate(-90 ${at - 4} ${middle})`}
        className={styles["says"]}
      >
        {says}
      </text>
    </g>
  );
}
