import styles from "./account.module.css";
import type { Answered } from "./ask-account.ts";

/** Why something was not done, read out when it comes. What belongs to a field is said there as well. */
export const Refusals = ({ answer }: { answer: Answered<unknown> | undefined }) => (
  <div role="alert" className={styles["refusal"]}>
    {answer && "refused" in answer
      ? answer.refused.map(({ message }) => <p key={message}>{message}</p>)
      : null}
  </div>
);
