import styles from "./proposals.module.css";

/** Why something was not done, read out when it comes. */
export const Refusals = ({ of }: { of: readonly { readonly refused: readonly string[] }[] }) => (
  <div role="alert" className={styles["refusal"]}>
    {of
      .flatMap(({ refused }) => refused)
      .map((message) => (
        <p key={message}>{message}</p>
      ))}
  </div>
);
