import { startTransition, useEffect } from "react";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";

interface Props {
  /** How far it is made. */
  percent: number;
  /** Asks again. */
  onAgain: () => Promise<unknown>;
}

/** Milliseconds until it is asked again. */
const AGAIN = 4_000;

/** Stands for what disagrees while that is still being looked for in the whole graph, and goes on by itself. */
export function DisagreementsBeingMade({ percent, onAgain }: Props) {
  useEffect(() => {
    // What fails is asked again with the next.
    const ask = () => startTransition(() => void onAgain().catch(() => undefined));
    const timer = setInterval(ask, AGAIN);
    return () => clearInterval(timer);
  }, [onAgain]);
  return (
    <article>
      <header className={reading["head"]}>
        <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />
        <PageHeading title="Disagreements">Where the evidence disagrees</PageHeading>
        <p className={reading["note"]} role="status">
          Still being looked for: after a start, all accepted claims are held against each other, beside
          everything else that is asked. This page goes on by itself.
        </p>
      </header>
      <p>
        <progress aria-label="Looked for so far" max={100} value={percent} /> {percent} %
      </p>
    </article>
  );
}
