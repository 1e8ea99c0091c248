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
      not be seen. Leave empty what you did not look for. A row without words was explained on a part above.
      “Possible”: it cannot be of other years. “Usual”: other years are unusual, not impossible. A sign of
      alteration has no date: it tells what was done to its part. Small print names the claims and how they
      are cited.
    </p>
  </>
);
