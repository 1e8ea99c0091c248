import { useState } from "react";
import type { SharedChanges } from "#server/domain/sharing/shared-changes.ts";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { saveFile } from "../shared/ui/save-file.ts";
import { TextField } from "../shared/ui/TextField.tsx";
import styles from "./chronicle.module.css";

/** Hands out what was accepted since a revision. */
export function GiveChanges() {
  const [since, setSince] = useState("0");
  const [given, setGiven] = useState<Answered<SharedChanges>>();
  const isSound = /^\d{1,9}$/.test(since.trim());
  const give = async () => {
    const came = await askServer<SharedChanges>("/chronicle/give", { since: Number(since) });
    setGiven(came);
    if ("refused" in came) return;
    const { house, until } = came.done;
    saveFile(
      `changes-${house}-${since.trim()}-${until.revision}.json`,
      `${JSON.stringify(came.done)}\n`,
      "application/json",
    );
  };
  return (
    <section className={styles["section"]} aria-labelledby="give">
      <h2 id="give">Give what was accepted here</h2>
      <p className={styles["note"]}>
        The file says thing by thing what became of the evidence after a revision, with the hash of the last
        one, signed by this house. It holds no names of persons, no examinations, and nothing that was only
        proposed.
      </p>
      <form
        className={styles["acts"]}
        onSubmit={(event) => {
          event.preventDefault();
          if (isSound) void give();
        }}
      >
        <TextField
          label="After revision"
          hint="0 for everything"
          value={since}
          onChange={setSince}
          inputMode="numeric"
        />
        <Button type="submit" isDisabled={!isSound}>
          Save the changes as a file
        </Button>
      </form>
      <p role="status">
        {given && "done" in given
          ? `Saved: ${given.done.edits.length} ${given.done.edits.length === 1 ? "edit" : "edits"}, from revision ${given.done.since.revision} to ${given.done.until.revision}.`
          : null}
      </p>
      <Refusals answer={given} />
    </section>
  );
}
