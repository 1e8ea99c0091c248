import { Aged } from "./Aged.tsx";
import styles from "./Weighing.module.css";
import { useWeighed } from "./weighing-desk.ts";

/** How many pieces are in it at least, and what must or cannot be of one. */
export function OriginsSection() {
  const { weighed } = useWeighed();
  const [first, ...rest] = weighed.words.origins ?? [];
  return (
    <Aged stage="origins" aria-label="How many pieces are in it" className={styles["section"]}>
      <h2 className={styles["heading"]}>How many pieces are in it</h2>
      {first === undefined ? (
        <p className={styles["none"]}>Not worked out yet.</p>
      ) : (
        <>
          <p className={styles["says"]}>{first}</p>
          {rest.map((line) => (
            <p key={line} className={styles["line"]}>
              {line}
            </p>
          ))}
        </>
      )}
    </Aged>
  );
}
