import styles from "./Sheet.module.css";

const BLANKS = ["Piece", "Where it stands", "Looked at on", "By"];

/** Blanks to fill in by hand, and how the sheet is read. */
export const SheetHead = () => (
  <>
    <div className={styles["blanks"]} aria-hidden="true">
      {BLANKS.map((label) => (
        <span key={label} className={styles["blank"]}>
          {label}
          <span className={styles["line"]} />
        </span>
      ))}
    </div>
    <p className={styles["legend"]}>
      Tick one box a row: <b>seen</b>; looked for and <b>not there</b>; <b>not visible</b>, that is, it could
      not be seen. Leave empty what you did not look for. Rows without words were told on a part before.
      “Possible”: it cannot be of other years. “Usual”: outside them unusual, not impossible. A sign speaks
      for a state of its part and has no date. Beside it stands how its claims are cited, and which they are.
    </p>
  </>
);
