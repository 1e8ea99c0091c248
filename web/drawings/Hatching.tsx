import type { PartSummary } from "#server/domain/report.ts";
import styles from "./FormDrawing.module.css";

type Speaks = PartSummary["speaks"];

/** Kinds of hatching: what is drawn over a part. Nothing where nothing speaks against it. */
export const HATCHING: Readonly<Partial<Record<Speaks, "hard" | "soft" | "sign" | "dots">>> = {
  "against-hard": "hard",
  "against-soft": "soft",
  sign: "sign",
  "not-looked": "dots",
};

/** Pattern definitions of one drawing; `prefix` keeps their ids apart from those of other drawings. */
export const Hatching = ({ prefix }: { prefix: string }) => (
  <defs>
    <pattern
      id={`${prefix}-hard`}
      width="6"
      height="6"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <line y2="6" className={styles["hard"]} />
    </pattern>
    <pattern
      id={`${prefix}-soft`}
      width="6"
      height="11.2"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <line y2="11.2" className={styles["soft"]} />
    </pattern>
    <pattern id={`${prefix}-sign`} width="26" height="18" patternUnits="userSpaceOnUse">
      <path d="M6 2l2.6 2.6L6 7.2 3.4 4.6zM19 11l2.6 2.6-2.6 2.6-2.6-2.6z" className={styles["sign"]} />
    </pattern>
    <pattern id={`${prefix}-dots`} width="9" height="9" patternUnits="userSpaceOnUse">
      <circle cx="2" cy="2" r="0.75" className={styles["dots"]} />
      <circle cx="6.5" cy="6.5" r="0.75" className={styles["dots"]} />
    </pattern>
    <pattern id={`${prefix}-original`} width="24" height="9" patternUnits="userSpaceOnUse">
      <path d="M0 3.2c6-.9 12 .9 24 0" className={styles["grain"]} />
    </pattern>
    <pattern
      id={`${prefix}-later`}
      width="5"
      height="5"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <line y2="5" className={styles["state"]} />
    </pattern>
    <pattern
      id={`${prefix}-reused`}
      width="7"
      height="7"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <path d="M0 0V7M0 0H7" className={styles["state"]} />
    </pattern>
    <pattern
      id={`${prefix}-reworked`}
      width="6"
      height="10"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(-45)"
    >
      <path d="M0 0V6M3 5V11M3 -5V1" className={styles["state"]} />
    </pattern>
  </defs>
);
