import styles from "./RowMark.module.css";
import type { StripMark } from "./strip-row.ts";

const PATHS: Readonly<Record<StripMark | "not-looked", string>> = {
  "against-hard": "M2 2l8 8M10 2l-8 8",
  "against-soft": "M2.5 9.5l7-7",
  for: "M6 2.2a3.8 3.8 0 1 0 .01 0z",
  silent: "M6 2.4a3.6 3.6 0 1 0 .01 0z",
  sign: "M6 1.2L10.8 6 6 10.8 1.2 6z",
  "sign-set-aside": "M6 1.2L10.8 6 6 10.8 1.2 6zM3.6 8.4l4.8-4.8",
  "sign-of-age": "M6 1.2L10.8 6 6 10.8 1.2 6zM6 4.4L7.6 6 6 7.6 4.4 6z",
  "not-looked": "M2.5 6h7",
};

/** A mark of 12 by 12 px told by its shape: cross, stroke, dot, open dot, diamond, struck diamond, diamond in a diamond; a dash for nothing yet. */
export const RowMark = ({ mark }: { mark: StripMark | "not-looked" }) => (
  <svg
    className={[styles["mark"], styles[mark]].filter(Boolean).join(" ")}
    viewBox="0 0 12 12"
    aria-hidden="true"
  >
    <path d={PATHS[mark]} />
  </svg>
);
