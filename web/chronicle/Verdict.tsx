import styles from "./chronicle.module.css";

/** Whether something holds, in words first; the colour only repeats it. */
export const Verdict = ({ holds, says }: { holds: boolean; says: string }) => (
  <p className={styles["says"]}>
    <strong className={styles[holds ? "holds" : "fails"]}>{holds ? "Holds." : "Does not hold."}</strong>{" "}
    {says}
  </p>
);
