import styles from "./ConclusionsColumn.module.css";

/** What the conclusion is not, and what not to do on the strength of it. Stands where one decides, and in print. */
export const Cautions = () => (
  <aside className={styles["cautions"]} aria-label="Cautions">
    <p>
      <b>Evidence, not a certificate or a valuation.</b> It says what agrees with the claim and what does not,
      as far as the cited sources go. It does not say who is to blame or what the piece is worth.
    </p>
    <p>
      Take nothing apart and use no solvent to settle a question: that is for a qualified conservator. Old
      finishes and paint may hold lead or arsenic, and old mirrors mercury; do not sand or heat them.
    </p>
    <p>
      Ivory, tortoiseshell and some rosewoods are protected: to move, sell or sample them, local law and the
      conventions on protected species decide.
    </p>
  </aside>
);
