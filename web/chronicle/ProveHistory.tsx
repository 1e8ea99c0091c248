import { useState } from "react";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import styles from "./chronicle.module.css";
import { type Proof, proveHistory } from "./prove-history.ts";
import { Verdict } from "./Verdict.tsx";

/** Makes the history again when it is asked for, says how far it is, and what came of it. */
export function ProveHistory() {
  const [proof, setProof] = useState<Proof>();
  const isRunning = proof !== undefined && "progress" in proof;
  return (
    <section className={styles["section"]} aria-labelledby="prove">
      <h2 id="prove">Is the history whole?</h2>
      <p className={styles["note"]}>
        All changes are made again from the first, and every row, every hash and every write of the ledger is
        compared with what is kept. It may take minutes in a large house; others work on meanwhile.
      </p>
      <Button look="main" isDisabled={isRunning} onPress={() => proveHistory(setProof)}>
        Check the history
      </Button>
      <div role="status">
        {isRunning ? <p>{proof.progress} …</p> : null}
        {proof && "proven" in proof ? (
          <Verdict
            holds
            says={`${proof.proven.revisions === 1 ? "1 revision was" : `${proof.proven.revisions} revisions were`} made again, and all that stands follows from them. ${sayCheckpoints(proof.proven.checkpoints)}`}
          />
        ) : null}
        {proof && "proven" in proof ? (
          <p className={styles["beside"]}>
            Newest hash <code className={styles["code"]}>{proof.proven.head}</code>
          </p>
        ) : null}
        {proof && "broken" in proof ? (
          <>
            <Verdict holds={false} says={proof.broken.message} />
            <p className={styles["beside"]}>Place: {proof.broken.path.join(" ") || "the store itself"}</p>
          </>
        ) : null}
      </div>
      <Refusals answer={proof && "refused" in proof ? proof : undefined} />
    </section>
  );
}

function sayCheckpoints(count: number): string {
  if (count === 0) return "No checkpoint was signed yet.";
  return count === 1 ? "The one checkpoint holds." : `All ${count} checkpoints hold.`;
}
