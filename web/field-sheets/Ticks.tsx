import styles from "./SheetRows.module.css";

/** The legend of a sheet says in full what each means. */
const BOXES = ["seen", "not there", "not visible"];

/** Boxes for a pencil, one of which is ticked, and with `hasNotes` a line to write on. */
export const Ticks = ({ hasNotes = false }: { hasNotes?: boolean }) => (
  <div className={styles["ticks"]} aria-hidden="true">
    {BOXES.map((label) => (
      <span key={label} className={styles["tick"]}>
        <i className={styles["box"]} />
        {label}
      </span>
    ))}
    {hasNotes ? <span className={styles["line"]} /> : null}
  </div>
);
