import { type ReactNode, startTransition, useEffect } from "react";
import styles from "./BeingMade.module.css";

interface Props {
  /** What is being made, and why it is not there yet. */
  children: ReactNode;
  /** Of what the percents are. */
  name: string;
  /** How far it is made. */
  percent: number;
  /** Asks again. */
  onAgain: () => Promise<unknown>;
}

/** Milliseconds until it is asked again. */
const AGAIN = 4_000;

/** Stands for what is still being made of the whole graph, says how far that is, and goes on by itself. It comes below the heading of its page. */
export function BeingMade({ children, name, percent, onAgain }: Props) {
  useEffect(() => {
    // What fails is asked again with the next.
    const ask = () => startTransition(() => void onAgain().catch(() => undefined));
    const timer = setInterval(ask, AGAIN);
    return () => clearInterval(timer);
  }, [onAgain]);
  return (
    <>
      <p className={styles["words"]} role="status">
        {children} This page goes on by itself.
      </p>
      <p>
        <progress aria-label={name} max={100} value={percent} /> {percent} %
      </p>
    </>
  );
}
