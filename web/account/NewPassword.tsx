import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { CodeField } from "./confirming-fields.tsx";
import { NewPasswordField } from "./NewPasswordField.tsx";

/** Takes a new password, and leads to sign in with it. */
export function NewPassword({ signInName, needsCode }: { signInName: string; needsCode: boolean }) {
  const [before, setBefore] = useState("");
  const [password, setPassword] = useState("");
  const [code, setCode] = useState("");
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const change = async (event: FormEvent) => {
    event.preventDefault();
    const came = await askAccount("change-password", { before, password, ...(needsCode ? { code } : {}) });
    setAnswer(came);
    if ("done" in came) window.location.assign("/sign-in?to=/account");
  };
  return (
    <form className={styles["form"]} onSubmit={change}>
      <input type="hidden" autoComplete="username" value={signInName} readOnly />
      <TextField
        label="Password you have now"
        type="password"
        autoComplete="current-password"
        value={before}
        onChange={setBefore}
        isRequired
      />
      <NewPasswordField
        label="New password"
        hint="At least 12 characters. You are signed out everywhere, and sign in with it."
        value={password}
        onChange={setPassword}
      />
      {needsCode ? <CodeField value={code} onChange={setCode} /> : null}
      <Refusals answer={answer} />
      <Button type="submit">Change the password</Button>
    </form>
  );
}
