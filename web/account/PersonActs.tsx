import { useState } from "react";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { ShownOnce } from "./ShownOnce.tsx";

interface Props {
  readonly id: string;
  readonly name: string;
  readonly version: number;
  readonly onChanged: () => Promise<void>;
}

/** What an owner seldom does with a person: begin the account anew, or erase it. Both say first what they do. */
export function PersonActs({ id, name, version, onChanged }: Props) {
  const [answer, setAnswer] = useState<Answered<{ secret?: string; until?: string }>>();
  const ask = async (action: string) => {
    const came = await askAccount<{ secret?: string; until?: string }>(action, {
      ...{ id, expectedVersion: version },
    });
    setAnswer(came);
    if ("done" in came && action === "erase-person") await onChanged();
  };
  const done = answer && "done" in answer ? answer.done : undefined;
  return (
    <details className={styles["seldom"]}>
      <summary>
        More<span className="visually-hidden"> for {name}</span>
      </summary>
      <p>
        A lost password or device: what {name} signs in with holds no more, sessions and tokens end, and a
        link lets {name} choose a new password.
      </p>
      <Button onPress={() => ask("begin-anew")}>Begin the account anew</Button>
      {done?.secret !== undefined && done.until !== undefined ? (
        <ShownOnce
          what="The link"
          secret={`${window.location.origin}/new-password#${done.secret}`}
          until={done.until}
        />
      ) : null}
      <p>
        Erasing takes away name and account for ever. What {name} did stays, as done by a former member.
        Backups hold the name until they are removed.
      </p>
      <Button onPress={() => ask("erase-person")}>Erase {name} for ever</Button>
      <Refusals answer={answer} />
    </details>
  );
}
