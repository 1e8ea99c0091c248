import { BeingMade } from "../shared/ui/BeingMade.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";

interface Props {
  /** How far it is made. */
  percent: number;
  /** Asks again. */
  onAgain: () => Promise<unknown>;
}

/** Stands for what disagrees while that is still being looked for in the whole graph. */
export const DisagreementsBeingMade = ({ percent, onAgain }: Props) => (
  <article>
    <header className={reading["head"]}>
      <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />
      <PageHeading title="Disagreements">Where the evidence disagrees</PageHeading>
      <BeingMade name="Looked for so far" percent={percent} onAgain={onAgain}>
        Still being looked for: after a start, all accepted claims are held against each other, beside
        everything else that is asked.
      </BeingMade>
    </header>
  </article>
);
