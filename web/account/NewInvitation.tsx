import { useState } from "react";
import { ROLES, type Role } from "#server/domain/people/caller.ts";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { Select } from "../shared/ui/Select.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { ShownOnce } from "./ShownOnce.tsx";

/** Makes a link by which one person gets an account. */
export function NewInvitation() {
  const [role, setRole] = useState<Role>("contributor");
  const [answer, setAnswer] = useState<Answered<{ secret: string; until: string }>>();
  return (
    <section className={styles["section"]} aria-labelledby="invite">
      <h2 id="invite">Invite somebody</h2>
      <div className={styles["acts"]}>
        <Select label="As" choices={ROLES.map((id) => ({ id, label: id }))} value={role} onChange={setRole} />
        <Button onPress={async () => setAnswer(await askAccount("invite", { role }))}>Make a link</Button>
      </div>
      <Refusals answer={answer} />
      {answer && "done" in answer ? (
        <ShownOnce
          what="The link"
          secret={`${window.location.origin}/invitation#${answer.done.secret}`}
          until={answer.done.until}
        />
      ) : null}
    </section>
  );
}
