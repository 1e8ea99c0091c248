import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { NewPasswordField } from "./NewPasswordField.tsx";

/** Where somebody whose account an owner began anew chooses a new password; the secret stands behind the # of the address. */
export function NewStartPage() {
  const [secret] = useState(() => window.location.hash.slice(1));
  const [password, setPassword] = useState("");
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const take = async (event: FormEvent) => {
    event.preventDefault();
    const came = await askAccount("take-new-password", { secret, password });
    setAnswer(came);
    if ("done" in came) window.location.assign("/account");
  };
  return (
    <article className={styles["page"]}>
      <PageHeading title="New password">Choose a new password</PageHeading>
      <p className={styles["note"]}>
        An owner of the house began your account anew. Your name to sign in with and all that you did stay;
        what you signed in with before holds no more.
      </p>
      <form className={styles["form"]} onSubmit={take}>
        <NewPasswordField value={password} onChange={setPassword} />
        <Refusals answer={answer} />
        <Button type="submit" look="main">
          Take this password
        </Button>
      </form>
    </article>
  );
}
