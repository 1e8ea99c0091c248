import { useState } from "react";
import { type Answered, askServer } from "../shared/asking/ask-server.ts";
import { Refusals } from "../shared/asking/Refusals.tsx";
import { readJsonFile } from "../shared/asking/read-json-file.ts";
import { AgainInWords, type ExaminedAgain } from "../shared/chronicle/AgainInWords.tsx";
import { ChooseFile } from "../shared/ui/ChooseFile.tsx";
import styles from "./chronicle.module.css";
import { Verdict } from "./Verdict.tsx";

type Judged = { readonly holds: boolean; readonly says: string };

/** Holds a file that somebody kept, a checkpoint or a signed report, against what stands here. */
export function CheckFile() {
  const [answer, setAnswer] = useState<Answered<Judged | ExaminedAgain>>();
  const [name, setName] = useState("");
  const check = async (file: File) => {
    setName(file.name);
    setAnswer(undefined);
    const read = await readJsonFile(file);
    if ("refusal" in read) return setAnswer({ refused: [{ code: "WRONG_FORMAT", message: read.refusal }] });
    const { format } = (read.value ?? {}) as { readonly format?: unknown };
    setAnswer(
      format === "scribeline/kept-report"
        ? await askServer("/chronicle/examine-again", { report: read.value })
        : await askServer("/chronicle/check-checkpoint", { checkpoint: read.value }),
    );
  };
  return (
    <section className={styles["section"]} aria-labelledby="file">
      <h2 id="file">Check a file that was kept</h2>
      <p className={styles["note"]}>
        A checkpoint that another house kept, or a signed report: the signature is checked, then what it says
        is held against what stands here. A report is examined again on the revision of its day.
      </p>
      <div className={styles["acts"]}>
        <ChooseFile types={[".json"]} onChoose={(file) => void check(file)} />
        <p className={styles["beside"]}>{name}</p>
      </div>
      <div role="status">
        {answer && "done" in answer ? (
          "holds" in answer.done ? (
            <Verdict {...answer.done} />
          ) : (
            <AgainInWords again={answer.done} />
          )
        ) : null}
      </div>
      <Refusals answer={answer} />
    </section>
  );
}
