import { useState } from "react";
import type { Checkpoint } from "#server/domain/proof/checkpoint.ts";
import type { HouseKey } from "#server/domain/proof/seal.ts";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { useAnswer } from "../shared/asking/use-answer.ts";
import { Button } from "../shared/ui/Button.tsx";
import { saveFile } from "../shared/ui/save-file.ts";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./chronicle.module.css";
import { KeyOfHouse } from "./KeyOfHouse.tsx";
import { Verdict } from "./Verdict.tsx";

interface Listed {
  readonly house: { readonly house: string; readonly keys: readonly HouseKey[] };
  readonly checkpoints: readonly {
    readonly id: string;
    readonly checkpoint: Checkpoint;
    readonly holds: boolean;
    readonly says: string;
  }[];
  readonly total: number;
  readonly after?: string;
}

const saveCheckpoint = (id: string, checkpoint: Checkpoint): void =>
  saveFile(`${id}.json`, `${JSON.stringify(checkpoint, null, 2)}\n`, "application/json");

/** What the house signed so far, each held against what stands, and the key that it signs with. */
export function Checkpoints() {
  const [after, setAfter] = useState<string>();
  const { answer, again } = useAnswer<Listed>("/chronicle/checkpoints", after === undefined ? {} : { after });
  const [signed, setSigned] = useState<Answered<object>>();
  if (answer === undefined) return <Waiting what="the checkpoints" />;
  if ("refused" in answer) return <Refusals answer={answer} />;
  const { checkpoints, house, total, after: next } = answer.done;
  return (
    <>
      <section className={styles["section"]} aria-labelledby="checkpoints">
        <h2 id="checkpoints">Checkpoints</h2>
        <p className={styles["note"]}>
          A checkpoint says what this house held at a time: the newest revision and the newest write of its
          ledger, each with its hash, signed by the house. Give one to another house now and then: whatever
          was rewritten afterwards shows against it, even if every hash here was made anew.
        </p>
        <Button
          onPress={async () => {
            setSigned(await askServer("/chronicle/sign-checkpoint"));
            setAfter(undefined);
            await again();
          }}
        >
          Sign a checkpoint now
        </Button>
        <Refusals answer={signed} />
        {total === 0 ? <p className={styles["note"]}>None was signed yet.</p> : null}
        <ol className={styles["list"]}>
          {checkpoints.map(({ id, checkpoint, holds, says }) => (
            <li key={id}>
              <h3>
                Revision {checkpoint.revision}, signed{" "}
                <time dateTime={checkpoint.at}>{sayDay(checkpoint.at)}</time>
              </h3>
              <Verdict holds={holds} says={says} />
              <p className={styles["beside"]}>
                hash begins <code>{checkpoint.head.slice(0, 16)}</code> · write {checkpoint.sequence}
              </p>
              <p className={styles["acts"]}>
                <Button
                  look="quiet"
                  onPress={() => saveCheckpoint(id, checkpoint)}
                  aria-label={`Save the checkpoint of revision ${checkpoint.revision}, write ${checkpoint.sequence}`}
                >
                  Save as a file
                </Button>
              </p>
            </li>
          ))}
        </ol>
        {next === undefined ? null : <Button onPress={() => setAfter(next)}>Show older</Button>}
        {after === undefined ? null : <Button onPress={() => setAfter(undefined)}>Show the newest</Button>}
      </section>
      <KeyOfHouse {...house} onRenewed={again} />
    </>
  );
}
