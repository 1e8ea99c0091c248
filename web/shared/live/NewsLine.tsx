import type { ReactNode } from "react";
import styles from "./NewsLine.module.css";

interface Props {
  /** What is said of a connection that is lost or catches up. */
  connection: string | undefined;
  /** What others did or do, each told by itself; in the same place of the list from one time to the next. */
  told: readonly (ReactNode | undefined)[];
}

/** One line at the foot of a page of what others do. It is told politely, moves nothing and takes no focus. */
export const NewsLine = ({ connection, told }: Props) => (
  <div
    className={`screen-only ${styles["line"]}`}
    data-empty={!connection && told.every((one) => one === undefined || one === "")}
  >
    <p role="status" className={styles["lost"]}>
      {connection}
    </p>
    {told.map((one, place) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: the place is what it is
      <p role="status" key={place}>
        {one}
      </p>
    ))}
  </div>
);

/** What is said where nothing arrives. */
export const LOST = "Connection lost: what others do does not arrive. Connecting again …";
