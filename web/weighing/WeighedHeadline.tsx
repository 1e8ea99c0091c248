import { memo } from "react";
import { Aged } from "./Aged.tsx";
import styles from "./WeighedHeadline.module.css";
import { WeighingStanding } from "./WeighingStanding.tsx";
import { useOdds, useRun, useWeighed } from "./weighing-desk.ts";

/** The weighing as a sentence with its range, what tells most, what it depends on, and how far it is worked out. */
export const WeighedHeadline = memo(function WeighedHeadline() {
  const { weighed } = useWeighed();
  const { isTrial } = useOdds();
  const { kind } = useRun().standing;
  const { headline, reasons, dependsOn } = weighed.words;
  return (
    <section className={styles["weighed"]} aria-label="The weighing">
      <div className={styles[kind === "waiting" || kind === "working" ? "room" : "whole"]}>
        {headline === undefined ? null : (
          <Aged as="div" stage="dates" className={styles["told"]}>
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
          </Aged>
        )}
      </div>
      {isTrial ? (
        <p className={styles["depends"]}>
          Weighed under assumptions that are tried on and not kept with the piece.
        </p>
      ) : null}
      <WeighingStanding />
    </section>
  );
});
