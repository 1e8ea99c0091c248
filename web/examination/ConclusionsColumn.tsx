import type { Glossary } from "#web/strips/glossary.ts";
import { WeighedConclusions } from "#web/weighing/WeighedConclusions.tsx";
import { Assumed } from "./Assumed.tsx";
import { Cautions } from "./Cautions.tsx";
import styles from "./ConclusionsColumn.module.css";
import { Gaps } from "./Gaps.tsx";
import { RuledOut } from "./RuledOut.tsx";
import type { Answer } from "./read-answer.ts";
import { Signs } from "./Signs.tsx";

interface Props {
  answer: Answer;
  glossary: Glossary;
}

/**
 * What follows, in this order: what rules it out, what would be unusual, what would have to be true, how many pieces are in it, what each
 * part is, signs of alteration, what is left open.
 */
export function ConclusionsColumn({ answer, glossary }: Props) {
  if (answer.kind !== "examined")
    return (
      <section className={styles["column"]} aria-label="Conclusions">
        <div className={styles["sections"]}>
          <p className={styles["none"]}>
            The piece as it is stored cannot be examined. Mend what is marked, or undo the last change.
          </p>
          <Cautions />
        </div>
      </section>
    );
  const { report, words } = answer;
  const isEmpty = report.findings.every((finding) => finding.observation === undefined);
  return (
    <section className={styles["column"]} aria-label="Conclusions">
      <div className={styles["sections"]}>
        <RuledOut
          title="What rules it out"
          hardness="physical"
          none={
            isEmpty
              ? "Record what you see first. Saw marks, nails and screws, drawer joints and handles say most of years."
              : "Nothing recorded so far."
          }
          report={report}
          words={words}
          glossary={glossary}
        />
        <RuledOut
          title="What would be unusual"
          hardness="practice"
          none={isEmpty ? "Nothing yet." : "Nothing recorded is out of its time."}
          report={report}
          words={words}
          glossary={glossary}
        />
        <WeighedConclusions />
        <Signs report={report} words={words} glossary={glossary} />
        <Gaps
          title="What was not searched"
          lines={words.notSearched}
          none={
            isEmpty
              ? "There is nothing to compare yet."
              : "Every pair of findings was compared. Nothing was left out."
          }
        />
        <Gaps
          title="What the graph does not know"
          lines={words.gaps}
          none={isEmpty ? "It shows as soon as something is recorded." : "Nothing that bears on this piece."}
        />
        <Assumed
          assumptions={report.assumptions}
          neighbourhood={report.neighbourhood}
          engine={report.engine}
          revision={report.revision}
        />
        <Cautions />
      </div>
    </section>
  );
}
