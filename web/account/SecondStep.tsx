import { useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { CodeField, PasswordAgain } from "./confirming-fields.tsx";
import { NewDevice } from "./NewDevice.tsx";

interface Props {
  readonly hasDevice: boolean;
  readonly recoveryCodes: number;
  readonly onChanged: () => Promise<void>;
}

/** Whether a device is asked for after the password, and the recovery codes for when it is lost. */
export function SecondStep({ hasDevice, recoveryCodes, onChanged }: Props) {
  const [codes, setCodes] = useState<readonly string[]>();
  const keep = async (made: readonly string[]) => {
    setCodes(made);
    await onChanged();
  };
  return (
    <section className={styles["section"]} aria-labelledby="second-step">
      <h2 id="second-step">A second step</h2>
      <p className={styles["note"]}>
        {hasDevice
          ? `After the password your device is asked for a code. Recovery codes left: ${recoveryCodes}.`
          : "With a device that shows codes, your password alone lets nobody in. Any program that makes one-time codes of six digits will do."}
      </p>
      {codes ? (
        <div role="status">
          <p>
            Keep these recovery codes where you find them without the device. Each lets you in once. They are
            shown this once.
          </p>
          <ul className={styles["codes"]}>
            {codes.map((code) => (
              <li key={code}>
                <code>{code}</code>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {hasDevice ? <KnownDevice onCodes={keep} onChanged={onChanged} /> : <NewDevice onCodes={keep} />}
    </section>
  );
}

/** What can be done with a device that is asked for. */
function KnownDevice({
  onCodes,
  onChanged,
}: {
  onCodes: (codes: readonly string[]) => void;
  onChanged: () => Promise<void>;
}) {
  const [before, setBefore] = useState("");
  const [code, setCode] = useState("");
  const [answer, setAnswer] = useState<Answered<object>>();
  const ask = async <Body extends object>(action: string) => {
    const came = await askAccount<Body>(action, { before, code });
    setAnswer(came);
    setCode("");
    return "done" in came ? came.done : undefined;
  };
  return (
    <form className={styles["form"]} onSubmit={(event) => event.preventDefault()}>
      <PasswordAgain value={before} onChange={setBefore} />
      <CodeField value={code} onChange={setCode} />
      <Refusals answer={answer} />
      <div className={styles["acts"]}>
        <Button
          onPress={async () => {
            const done = await ask<{ codes: readonly string[] }>("renew-recovery-codes");
            if (done) onCodes(done.codes);
          }}
        >
          Make new recovery codes
        </Button>
        <Button
          onPress={async () => {
            if (await ask("remove-device")) await onChanged();
          }}
        >
          Take the device away
        </Button>
      </div>
    </form>
  );
}
