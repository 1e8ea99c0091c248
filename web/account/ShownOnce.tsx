import { sayDay } from "../shared/words/say-day.ts";
import styles from "./account.module.css";

/** Something secret that is told this once. */
export const ShownOnce = ({ what, secret, until }: { what: string; secret: string; until: string }) => (
  <div role="status">
    <p>
      {what} holds until {sayDay(until)}. It is shown this once; copy it now.
    </p>
    <p>
      <code className={styles["secret"]}>{secret}</code>
    </p>
  </div>
);
