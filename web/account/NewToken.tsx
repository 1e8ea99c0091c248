import { type FormEvent, useState } from "react";
import { ROLES, type Role } from "#server/domain/people/caller.ts";
import { Refusals } from "#web/shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./account.module.css";
import { type Answered, askAccount } from "./ask-account.ts";
import { ShownOnce } from "./ShownOnce.tsx";

/** Makes a token of up to one's own role, and shows it this once. */
export function NewToken({ most, onMade }: { most: Role; onMade: () => Promise<void> }) {
  const [label, setLabel] = useState("");
  const [role, setRole] = useState<Role>("reader");
  const [days, setDays] = useState("90");
  const [answer, setAnswer] = useState<Answered<{ secret: string; until: string }>>();
  const make = async (event: FormEvent) => {
    event.preventDefault();
    const came = await askAccount<{ secret: string; until: string }>("make-token", {
      label,
      role,
      days: Number(days),
    });
    setAnswer(came);
    if ("done" in came) await onMade();
  };
  return (
    <form className={styles["form"]} onSubmit={make}>
      <TextField label="What it is for" value={label} onChange={setLabel} isRequired />
      <Select
        label="What it may do"
        choices={ROLES.slice(0, ROLES.indexOf(most) + 1).map((id) => ({ id, label: `as ${id}` }))}
        value={role}
        onChange={setRole}
      />
      <TextField label="Days that it holds" inputMode="numeric" value={days} onChange={setDays} isRequired />
      <Refusals answer={answer} />
      <Button type="submit">Make a token</Button>
      {answer && "done" in answer ? (
        <ShownOnce what="The token" secret={answer.done.secret} until={answer.done.until} />
      ) : null}
    </form>
  );
}
