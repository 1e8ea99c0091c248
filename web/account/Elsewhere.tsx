import { type FormEvent, useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { CodeField, PasswordAgain } from "./confirming-fields.tsx";
import { goElsewhere } from "./go-elsewhere.ts";

interface Props {
  /** What the other provider is called. */
  readonly provider: string;
  readonly linked: readonly { readonly id: string; readonly issuer: string; readonly linkedAt: string }[];
  readonly needsCode: boolean;
  readonly onChanged: () => Promise<void>;
}

/** One's accounts at the other provider that this house knows, by which one signs in as well. */
export function Elsewhere({ provider, linked, needsCode, onChanged }: Props) {
  const [before, setBefore] = useState("");
  const [code, setCode] = useState("");
  const [answer, setAnswer] = useState<Answered<unknown>>();
  const link = async (event: FormEvent) => {
    event.preventDefault();
    setAnswer(await goElsewhere("link-elsewhere", { before, ...(needsCode ? { code } : {}) }, "/account"));
  };
  return (
    <section className={styles["section"]} aria-labelledby="elsewhere">
      <h2 id="elsewhere">{provider}</h2>
      <p className={styles["note"]}>
        With an account linked you sign in there and need no password here. Whoever gets into that account
        gets into this one.
      </p>
      <ul className={styles["list"]}>
        {linked.map(({ id, issuer, linkedAt }) => (
          <li key={id} className={styles["item"]}>
            <span>
              at {new URL(issuer).hostname}, linked {sayDay(linkedAt)}
            </span>
            <Button
              look="quiet"
              onPress={async () => {
                setAnswer(await askAccount("unlink-elsewhere", { id }));
                await onChanged();
              }}
            >
              Unlink
            </Button>
          </li>
        ))}
      </ul>
      <form className={styles["form"]} onSubmit={link}>
        <PasswordAgain value={before} onChange={setBefore} />
        {needsCode ? <CodeField value={code} onChange={setCode} /> : null}
        <Refusals answer={answer} />
        <Button type="submit">Link an account</Button>
      </form>
    </section>
  );
}
