import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { CodeField, PasswordAgain } from "./confirming-fields.tsx";
import { makePasskey } from "./passkeys-here.ts";

interface Props {
  readonly passkeys: readonly { readonly id: string; readonly label: string; readonly madeAt: string }[];
  readonly needsCode: boolean;
  readonly onChanged: () => Promise<void>;
}

/** Keys that one signs in with in the place of name, password and code. */
export function Passkeys({ passkeys, needsCode, onChanged }: Props) {
  const [label, setLabel] = useState("");
  const [before, setBefore] = useState("");
  const [code, setCode] = useState("");
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const confirming = { before, ...(needsCode ? { code } : {}) };
  const told = async (came: Answered<unknown>) => {
    setAnswer(came);
    setCode("");
    await onChanged();
  };
  return (
    <section className={styles["section"]} aria-labelledby="passkeys">
      <h2 id="passkeys">Passkeys</h2>
      <p className={styles["note"]}>
        A passkey is a key that this device or your key ring keeps, and opens by finger, face or number. It
        signs you in without name, password or code, and serves on this address alone.
      </p>
      <form
        className={styles["form"]}
        onSubmit={async (event: FormEvent) => {
          event.preventDefault();
          await told(await makePasskey(label, confirming));
        }}
      >
        <PasswordAgain value={before} onChange={setBefore} />
        {needsCode ? <CodeField value={code} onChange={setCode} /> : null}
        <TextField label="What to call the key" value={label} onChange={setLabel} />
        <Refusals answer={answer} />
        <Button type="submit" isDisabled={label.trim() === ""}>
          Make a passkey
        </Button>
      </form>
      <ul className={styles["list"]}>
        {passkeys.map((one) => (
          <li key={one.id} className={styles["item"]}>
            <span>
              {one.label}, made {sayDay(one.madeAt)}
            </span>
            <Button
              look="quiet"
              aria-label={`Take away ${one.label}`}
              onPress={async () => told(await askAccount("remove-passkey", { id: one.id, ...confirming }))}
            >
              Take away
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
