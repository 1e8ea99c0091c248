import styles from "./Waiting.module.css";

/** Stands where something is still being read; shows only after a moment, so that quick answers do not flicker. */
export const Waiting = ({ what }: { what: string }) => (
  <p className={styles["waiting"]} role="status">
    Reading {what} …
  </p>
);
