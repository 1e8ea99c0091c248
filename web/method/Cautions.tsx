import styles from "./MethodPage.module.css";

/** What to be careful of, where looking or concluding can do harm. */
export const Cautions = () => (
  <section id="cautions" className={styles["cautions"]}>
    <h2>Cautions</h2>
    <ul className={styles["assumed"]}>
      <li>
        <b>Evidence, not a certificate or a valuation.</b> A finding is only as good as what was seen and what
        has been published. It does not say who owns a piece, what it is worth, or whether anybody meant to
        deceive.
      </li>
      <li>
        <b>Take nothing apart to look.</b> Drawing a nail, lifting a veneer or turning out a glue block
        destroys what it would show. Taking apart, cleaning and solvents are for a qualified conservator.
      </li>
      <li>
        <b>Old finishes and fittings can poison.</b> Paint may hold lead, green and yellow colours arsenic,
        the silvering behind an old mirror mercury. Do not scrape, sand or heat them; wash your hands after
        handling.
      </li>
      <li>
        <b>Heavy and weak at once.</b> Empty a case before moving it, lift it by its frame and not by its top
        or mouldings, and not alone. Tall cases and loose marble tops fall.
      </li>
      <li>
        <b>Protected species.</b> Ivory, tortoiseshell and some rosewoods may not be sold, moved across a
        border or sampled without a permit. The law where the piece stands decides.
      </li>
    </ul>
  </section>
);
