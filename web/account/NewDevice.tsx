import { type FormEvent, lazy, Suspense, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { CodeField, PasswordAgain } from "./confirming-fields.tsx";

const QrCode = lazy(async () => ({ default: (await import("./QrCode.tsx")).QrCode }));

interface Begun {
  readonly secret: string;
  readonly address: string;
}

/** Adds a device: the password, then what the device is to be told, then its first code. `onCodes` gets the recovery codes. */
export function NewDevice({ onCodes }: { onCodes: (codes: readonly string[]) => void }) {
  const [before, setBefore] = useState("");
  const [code, setCode] = useState("");
  const [begun, setBegun] = useState<Answered<Begun>>();
  const [answer, setAnswer] = useState<Answered<{ codes: readonly string[] }>>();
  const begin = async (event: FormEvent) => {
    event.preventDefault();
    setBegun(await askAccount<Begun>("begin-device", { before }));
  };
  const finish = async (event: FormEvent) => {
    event.preventDefault();
    const came = await askAccount<{ codes: readonly string[] }>("finish-device", { code });
    setAnswer(came);
    if ("done" in came) onCodes(came.done.codes);
  };
  if (begun === undefined || "refused" in begun)
    return (
      <form className={styles["form"]} onSubmit={begin}>
        <PasswordAgain value={before} onChange={setBefore} />
        <Refusals answer={begun} />
        <Button type="submit">Add a device</Button>
      </form>
    );
  const { secret, address } = begun.done;
  return (
    <form className={styles["form"]} onSubmit={finish}>
      <p>
        Let the device read this picture, or type the letters into it. It then shows a code of six digits.
      </p>
      <Suspense fallback={<div className={styles["qr"]} />}>
        <QrCode text={address} label="The secret for the device, as a picture; it stands below in letters" />
      </Suspense>
      <TextField label="In letters" value={secret.replaceAll(/(.{4})(?=.)/g, "$1 ")} isReadOnly />
      <CodeField value={code} onChange={setCode} hint="The six digits that the device shows now." />
      <Refusals answer={answer} />
      <Button type="submit" look="main">
        Ask for it from now on
      </Button>
    </form>
  );
}
