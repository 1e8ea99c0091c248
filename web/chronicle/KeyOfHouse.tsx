import { useState } from "react";
import type { HouseKey } from "#server/domain/proof/seal.ts";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { saveFile } from "../shared/ui/save-file.ts";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./chronicle.module.css";

interface Props {
  house: string;
  keys: readonly HouseKey[];
  onRenewed: () => Promise<void>;
}

/** The name of the house and the key it signs with; a new key can take its place. */
export function KeyOfHouse({ house, keys, onRenewed }: Props) {
  const [isAsked, setAsked] = useState(false);
  const [renewed, setRenewed] = useState<Answered<object>>();
  const key = keys.at(-1);
  return (
    <section className={styles["section"]} aria-labelledby="key">
      <h2 id="key">The key of this house</h2>
      <p className={styles["note"]}>
        Other houses know this one as <code className={styles["code"]}>{house}</code>, a name that follows
        from its first key. It signs with{" "}
        {keys.length === 1 ? "that key" : `its key number ${keys.length}, vouched for by the one before it`}
        {key === undefined ? "" : `, since ${sayDay(key.since)}`}. Tell the name to others by another way than
        with the files, so that they can compare.
      </p>
      <p className={styles["beside"]}>
        Public key (Ed25519): <code className={styles["code"]}>{key?.publicKey}</code>
      </p>
      <div className={styles["acts"]}>
        <Button
          onPress={() =>
            saveFile(
              `${house}.json`,
              `${JSON.stringify({ format: "scribeline/house", house, keys }, null, 2)}\n`,
              "application/json",
            )
          }
        >
          Save the public keys
        </Button>
        {isAsked ? null : <Button onPress={() => setAsked(true)}>Change to a new key …</Button>}
      </div>
      {isAsked ? (
        <div className={styles["acts"]}>
          <p className={styles["note"]}>
            The old key vouches for the new one and is thrown away. What it signed can be checked as before.
          </p>
          <Button
            onPress={async () => {
              setRenewed(await askServer("/chronicle/renew-key"));
              setAsked(false);
              await onRenewed();
            }}
          >
            Change the key
          </Button>
          <Button look="quiet" onPress={() => setAsked(false)}>
            Leave it
          </Button>
        </div>
      ) : null}
      <p role="status">
        {renewed && "done" in renewed ? "The house signs with a new key from now on." : null}
      </p>
      <Refusals answer={renewed} />
    </section>
  );
}
