import styles from "./WeighedHeadline.module.css";
import { WeighingStanding } from "./WeighingStanding.tsx";
import { useWeighed } from "./weighing-desk.ts";

/** The weighing as a sentence with its range, what tells most, what it depends on, and how far it is worked out. */
export function WeighedHeadline() {
  const { weighed, isOld, isTrial } = useWeighed();
  const { headline, reasons, dependsOn } = weighed.words;
  return (
    <section className={styles["weighed"]} aria-label="The weighing">
      {headline === undefined ? null : (
        <div data-old={isOld("dates")} className={styles["told"]}>
          <p className={styles["says"]}>{headline}</p>
          {reasons && reasons.length > 0 ? (
            <ol className={styles["reasons"]}>
              {reasons.map((reason) => (
                <li key={reason}>{reason}</li>
              ))}
            </ol>
          ) : null}
          {dependsOn && dependsOn.length > 0 ? (
            <p className={styles["depends"]}>
              <b>It depends on</b> {dependsOn.join("; ")}.
            </p>
          ) : null}
        </div>
      )}
      {isTrial ? (
        <p className={styles["depends"]}>
          Weighed under assumptions that are tried on and not kept with the piece.
        </p>
      ) : null}
      <WeighingStanding />
    </section>
  );
}
