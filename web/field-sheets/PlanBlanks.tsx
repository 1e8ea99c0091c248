import styles from "./Sheet.module.css";

const BLANKS = ["Piece", "Where it stands", "Looked at on", "By"];

interface Props {
  /** Whether there are blanks to fill in by hand. */
  hasBlanks: boolean;
  count: number;
  /** Looks that the plan was chosen from. */
  considered: number;
}

/** Blanks for a pencil, and how the plan is read. */
export const PlanBlanks = ({ hasBlanks, count, considered }: Props) => (
  <>
    {hasBlanks ? (
      <div className={styles["blanks"]} aria-hidden="true">
        {BLANKS.map((label) => (
          <span key={label} className={styles["blank"]}>
            {label}
            <span className={styles["line"]} />
          </span>
        ))}
      </div>
    ) : null}
    <p className={styles["legend"]}>
      {count} looks, chosen from {considered} by what they would tell of the claim and of the state of the
      parts for the trouble they take, whichever way they turn out. The number is the order over all; begin
      with those in a box, if time is short. “Not there” is for what was looked for; leave empty what was not.
      What an answer does is reckoned under stated assumptions; the years and their claims stand below it.
    </p>
  </>
);
