import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { NewPasswordField } from "./NewPasswordField.tsx";

/** Where an account is made: of an invitation, whose secret stands in the address, or the first of the house, whose secret is typed. */
export function InvitationPage({ isFirst = false }: { isFirst?: boolean }) {
  // What stands behind # is never sent to the server with the address.
  const [secret, setSecret] = useState(() => window.location.hash.slice(1));
  const [name, setName] = useState("");
  const [signInName, setSignInName] = useState("");
  const [password, setPassword] = useState("");
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const accept = async (event: FormEvent) => {
    event.preventDefault();
    const came = await askAccount("accept-invitation", { secret: secret.trim(), name, signInName, password });
    setAnswer(came);
    if ("done" in came) window.location.assign("/");
  };
  const title = isFirst ? "Set up the house" : "Accept an invitation";
  return (
    <article className={styles["page"]}>
      <PageHeading title={title}>{title}</PageHeading>
      <p className={styles["note"]}>
        {isFirst
          ? "The first owner invites all others. The secret stands in the log of the server, where it says “first owner”; it serves once."
          : "Choose how you sign in from now on. The invitation serves once, for 7 days."}
      </p>
      <form className={styles["form"]} onSubmit={accept}>
        {isFirst ? (
          <TextField
            label="Secret from the log"
            autoComplete="off"
            value={secret}
            onChange={setSecret}
            isRequired
          />
        ) : null}
        <TextField
          label="Your name"
          hint="As the others in the house see it."
          autoComplete="name"
          value={name}
          onChange={setName}
          isRequired
        />
        <TextField
          label="Name to sign in with"
          hint="Letters and digits, with . - _ or @ between them."
          autoComplete="username"
          value={signInName}
          onChange={setSignInName}
          isRequired
        />
        <NewPasswordField value={password} onChange={setPassword} />
        <Refusals answer={answer} />
        <Button type="submit" look="main">
          Make the account
        </Button>
      </form>
    </article>
  );
}
