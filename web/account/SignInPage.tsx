import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount, pathToGoTo, type Who } from "./ask-account.ts";
import { CodeField } from "./confirming-fields.tsx";
import { goElsewhere } from "./go-elsewhere.ts";
import { hasPasskeys } from "./has-passkeys.ts";
import { useAsked } from "./use-asked.ts";

/** Where one signs in, in one step or two, and then goes on to where one wanted to. */
export function SignInPage() {
  const [signInName, setName] = useState("");
  const [password, setPassword] = useState("");
  const [code, setCode] = useState("");
  const [isSecond, setSecond] = useState(false);
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const { answer: who } = useAsked<Who>("who");
  const provider = who && "done" in who ? who.done.provider : undefined;
  const [isWaiting, setWaiting] = useState(false);
  const signIn = async (event: FormEvent) => {
    event.preventDefault();
    setWaiting(true);
    const came = await askAccount("sign-in", { signInName, password, ...(isSecond ? { code } : {}) });
    setWaiting(false);
    setCode("");
    const isAsked = "refused" in came && came.refused.some((why) => why.code === "SECOND_STEP_NEEDED");
    if (isAsked) setSecond(true);
    setAnswer(isAsked && !isSecond ? undefined : came);
    // The whole page is read anew: nothing of whoever sat here before stays in it.
    if ("done" in came) window.location.assign(pathToGoTo(window.location.search));
  };
  return (
    <article className={styles["page"]}>
      <PageHeading title="Sign in">{isSecond ? "The second step" : "Sign in"}</PageHeading>
      <form className={styles["form"]} onSubmit={signIn}>
        {isSecond ? (
          <CodeField value={code} onChange={setCode} autoFocus />
        ) : (
          <>
            <TextField
              label="Name to sign in with"
              autoComplete="username"
              value={signInName}
              onChange={setName}
              isRequired
            />
            <TextField
              label="Password"
              type="password"
              autoComplete="current-password"
              value={password}
              onChange={setPassword}
              isRequired
            />
          </>
        )}
        <Refusals answer={answer} />
        <Button type="submit" look="main" isDisabled={isWaiting}>
          Sign in
        </Button>
      </form>
      {hasPasskeys() && !isSecond ? (
        <Button
          onPress={async () => {
            const { signInByPasskey } = await import("./passkeys-here.ts");
            const came = await signInByPasskey();
            setAnswer(came);
            if ("done" in came) window.location.assign(pathToGoTo(window.location.search));
          }}
        >
          Sign in with a passkey
        </Button>
      ) : null}
      {provider ? (
        <Button
          onPress={async () =>
            setAnswer(await goElsewhere("begin-elsewhere", {}, pathToGoTo(window.location.search)))
          }
        >
          Sign in with {provider}
        </Button>
      ) : null}
      <p className={styles["note"]}>
        {isSecond
          ? "If the device is lost, take one of the recovery codes that you kept; each serves once. If you have none, an owner of the house can begin your account anew."
          : "An account is made by an invitation. If you have none, or do not know your password any more, ask an owner of the house."}
      </p>
    </article>
  );
}
