import styles from "./RowMark.module.css";
import type { StripMark } from "./strip-row.ts";

/** What each mark means, for legends and for those who do not see it. */
export const MARK_WORDS: Readonly<Record<StripMark, string>> = {
  "against-hard": "cannot be of the claimed years",
  "against-soft": "unusual for the claimed years",
  for: "agrees with the claimed years",
  silent: "says nothing of the date",
  sign: "sign of alteration",
  "sign-set-aside": "sign of alteration, set aside",
};

const PATHS: Readonly<Record<StripMark | "not-looked", string>> = {
  "against-hard": "M2 2l8 8M10 2l-8 8",
  "against-soft": "M2.5 9.5l7-7",
  for: "M6 2.2a3.8 3.8 0 1 0 .01 0z",
  silent: "M6 2.4a3.6 3.6 0 1 0 .01 0z",
  sign: "M6 1.2L10.8 6 6 10.8 1.2 6z",
  "sign-set-aside": "M6 1.2L10.8 6 6 10.8 1.2 6zM3.6 8.4l4.8-4.8",
  "not-looked": "M2.5 6h7",
};

/** A mark of 12 by 12 px told by its shape: cross, stroke, dot, open dot, diamond, struck diamond; a dash for nothing yet. */
export const RowMark = ({ mark }: { mark: StripMark | "not-looked" }) => (
  <svg className={`${styles["mark"]} ${styles[mark]}`} viewBox="0 0 12 12" aria-hidden="true">
    <path d={PATHS[mark]} />
  </svg>
);
