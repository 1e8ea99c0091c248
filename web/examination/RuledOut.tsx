import type { Hardness } from "#server/domain/claim.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import { RowMark } from "#web/strips/RowMark.tsx";
import { Steps } from "#web/strips/Steps.tsx";
import styles from "./ConclusionsColumn.module.css";

interface Props {
  title: string;
  /** physical: cannot be. practice: unusual. */
  hardness: Hardness;
  /** What stands there where there is nothing. */
  none: string;
  report: Report;
  words: ReportWords;
  glossary: Glossary;
}

/** Rule-outs of one hardness as sentences, each with its chain and sources. */
export function RuledOut({ title, hardness, none, report, words, glossary }: Props) {
  const found = report.ruleOuts.filter((ruleOut) => ruleOut.hardness === hardness);
  const count = found.length === 1 ? "1 reason" : `${found.length} reasons, each by itself`;
  return (
    <section aria-label={title}>
      <h2 className={styles["heading"]}>
        {title} {found.length > 0 ? <span>· {count}</span> : null}
      </h2>
      {found.length === 0 ? <p className={styles["none"]}>{none}</p> : null}
      <ul>
        {found.map((ruleOut) => {
          const said = words.ruleOuts.find((one) => one.id === ruleOut.id);
          if (!said) return null;
          return (
            <li key={ruleOut.id} className={styles["why"]}>
              <p className={styles["says"]}>
                <RowMark mark={hardness === "physical" ? "against-hard" : "against-soft"} />
                {said.says}
              </p>
              <div className={styles["rest"]}>
                <Steps steps={said.steps} glossary={glossary} />
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
