import { useState } from "react";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { readJsonFile } from "../shared/asking/read-json-file.ts";
import { Button } from "../shared/ui/Button.tsx";
import { ChooseFile } from "../shared/ui/ChooseFile.tsx";
import styles from "./chronicle.module.css";
import { type TakenChanges, TakenInWords } from "./TakenInWords.tsx";

/** Looks through what another house gave, then proposes it. */
export function TakeChanges() {
  const [file, setFile] = useState<{ readonly name: string; readonly changes: unknown }>();
  const [answer, setAnswer] = useState<Answered<TakenChanges> | "asked">();
  const [isLook, setLook] = useState(true);
  const ask = async (changes: unknown, look: boolean) => {
    setAnswer("asked");
    setAnswer(await askServer<TakenChanges>("/chronicle/take", { changes, look }));
    setLook(look);
  };
  const choose = async (chosen: File) => {
    const read = await readJsonFile(chosen);
    setFile(undefined);
    if ("refusal" in read) return setAnswer({ refused: [{ code: "WRONG_FORMAT", message: read.refusal }] });
    setFile({ name: chosen.name, changes: read.value });
    await ask(read.value, true);
  };
  const done = answer && answer !== "asked" && "done" in answer ? answer.done : undefined;
  return (
    <section className={styles["section"]} aria-labelledby="take">
      <h2 id="take">Take what another house accepted</h2>
      <p className={styles["note"]}>
        The file is looked through first: what stands here already, what would be a correction, what may be
        here under another name. Then each change becomes a proposal that says where it came from. Taking a
        file twice proposes nothing twice.
      </p>
      <div className={styles["acts"]}>
        <ChooseFile
          types={[".json"]}
          isDisabled={answer === "asked"}
          onChoose={(file) => void choose(file)}
        />
        <p className={styles["beside"]}>{file?.name}</p>
      </div>
      <div role="status">
        {answer === "asked" ? "Looking through it …" : null}
        {done === undefined ? null : <TakenInWords taken={done} isLook={isLook} />}
      </div>
      {done !== undefined && isLook && file !== undefined && done.proposed.length > 0 ? (
        <Button look="main" onPress={() => ask(file.changes, false)}>
          {done.proposed.length === 1 ? "Propose it here" : `Propose all ${done.proposed.length} here`}
        </Button>
      ) : null}
      <Refusals answer={answer === "asked" ? undefined : answer} />
    </section>
  );
}
