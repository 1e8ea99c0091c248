import type { Answered } from "./ask-server.ts";
import styles from "./Refusals.module.css";

/** Why something was not done, read out when it comes. */
export const Refusals = ({ answer }: { answer: Answered<unknown> | undefined }) => (
  <div role="alert" className={styles["refusal"]}>
    {answer && "refused" in answer
      ? answer.refused.map(({ message }) => <p key={message}>{message}</p>)
      : null}
  </div>
);
