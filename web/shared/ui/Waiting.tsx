import styles from "./Waiting.module.css";

/**
 * Stands where something is still being read; shows only after a moment, so that quick answers do not flicker. For a
 * whole page it is as high as the window, so that what stands below the page does not move when it comes.
 */
export const Waiting = ({ what, isPage = false }: { what: string; isPage?: boolean }) => (
  <p className={styles[isPage ? "page" : "waiting"]} role="status">
    Reading {what} …
  </p>
);
