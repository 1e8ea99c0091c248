import styles from "./Weighing.module.css";
import { useWeighed } from "./weighing-desk.ts";

/** How many pieces are in it at least, and what must or cannot be of one. */
export function OriginsSection() {
  const { weighed, isOld } = useWeighed();
  const [first, ...rest] = weighed.words.origins ?? [];
  return (
    <section aria-label="How many pieces are in it" data-old={isOld("origins")} className={styles["section"]}>
      <h2 className={styles["heading"]}>How many pieces are in it</h2>
      {first === undefined ? (
        <p className={styles["none"]}>Not worked out.</p>
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
    </section>
  );
}
