import type { ReactNode } from "react";
import { Button } from "./Button.tsx";
import styles from "./Standing.module.css";

interface StandingProps {
  readonly children: ReactNode;
  /** Beside the words, how much is done. */
  readonly count?: ReactNode;
  /** What can be done about it. */
  readonly act?: { readonly says: string; readonly onPress: () => void };
  readonly hasFailed?: boolean;
}

/** One line on how far long work is, which is read out when it says something else, and what can be done about it. */
export const Standing = ({ children, count, act, hasFailed = false }: StandingProps) => (
  <div className={styles["standing"]}>
    {hasFailed ? (
      <p role="alert" className={styles["failed"]}>
        {children}
      </p>
    ) : (
      <p role="status">{children}</p>
    )}
    {count}
    {act ? (
      <span className="screen-only">
        <Button look="quiet" onPress={act.onPress}>
          {act.says}
        </Button>
      </span>
    ) : null}
  </div>
);
