import { useState } from "react";
import type { ListedReport } from "#server/domain/chronicle/kept-report.ts";
import { type Answered, askServer } from "../asking/ask-server.ts";
import { Refusals } from "../asking/Refusals.tsx";
import { useAnswer } from "../asking/use-answer.ts";
import { Button } from "../ui/Button.tsx";
import { saveFile } from "../ui/save-file.ts";
import { Waiting } from "../ui/Waiting.tsx";
import { sayDay } from "../words/say-day.ts";
import { AgainInWords, type ExaminedAgain } from "./AgainInWords.tsx";
import styles from "./SignedReports.module.css";

/** The reports that were signed of a piece, with what lets one check them; and signing the one that stands. */
export function SignedReports({ examination }: { examination: string }) {
  const { answer, again } = useAnswer<{ readonly reports: readonly ListedReport[] }>(
    "/chronicle/signed-reports",
    { examination },
  );
  const [signed, setSigned] = useState<Answered<object>>();
  if (answer === undefined) return <Waiting what="the signed reports" />;
  return (
    <div className={styles["reports"]}>
      <p className={styles["note"]}>
        A signed report keeps the piece and the answer as they stand, with the revision of the evidence and
        its hash. It can be made again at any time, and has to be the same to the byte.
      </p>
      <Button
        onPress={async () => {
          setSigned(await askServer("/chronicle/sign-report", { examination }));
          await again();
        }}
      >
        Sign the report as it stands
      </Button>
      <Refusals answer={signed} />
      <Refusals answer={answer} />
      {"done" in answer && answer.done.reports.length > 0 ? (
        <ol className={styles["list"]}>
          {answer.done.reports.map((report) => (
            <SignedReport key={report.id} report={report} />
          ))}
        </ol>
      ) : null}
    </div>
  );
}

function SignedReport({ report: { id, at, revision, hash, record } }: { report: ListedReport }) {
  const [again, setAgain] = useState<Answered<ExaminedAgain> | "asked">();
  const [fetched, setFetched] = useState<Answered<object>>();
  const when = `${sayDay(at)} on revision ${revision}`;
  return (
    <li className={styles["report"]}>
      <p>
        Signed <time dateTime={at}>{when}</time> of the evidence
      </p>
      <p className={styles["beside"]}>
        record {record} of the piece · hash begins <code>{hash.slice(0, 16)}</code>
      </p>
      <div className={styles["acts"]}>
        <Button
          look="quiet"
          isDisabled={again === "asked"}
          aria-label={`Examine again as on its day, the report signed ${when}`}
          onPress={async () => {
            setAgain("asked");
            setAgain(await askServer<ExaminedAgain>("/chronicle/examine-again", { id }));
          }}
        >
          Examine again as on its day
        </Button>
        <Button
          look="quiet"
          aria-label={`Save as a file the report signed ${when}`}
          onPress={async () => {
            const came = await askServer("/chronicle/signed-report", { id });
            setFetched(came);
            if ("done" in came)
              saveFile(`${id}.json`, `${JSON.stringify(came.done, null, 2)}\n`, "application/json");
          }}
        >
          Save as a file
        </Button>
      </div>
      <div role="status">
        {again === "asked" ? "Examining again …" : null}
        {again && again !== "asked" && "done" in again ? <AgainInWords again={again.done} /> : null}
      </div>
      <Refusals answer={again === "asked" ? undefined : again} />
      <Refusals answer={fetched} />
    </li>
  );
}
