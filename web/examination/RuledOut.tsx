import { memo } from "react";
import type { Hardness } from "#server/domain/claim.ts";
import { holdsEverywhere } from "#server/domain/holds-everywhere.ts";
import { pickRuleOuts } from "#server/domain/pick-rule-outs.ts";
import type { Report, RuleOut } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { KeptDisclosure } from "#web/shared/ui/KeptDisclosure.tsx";
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
  const everywhere = report.ruleOuts.filter((ruleOut) => holdsEverywhere(ruleOut, report));
  const { told, following } = pickRuleOuts(everywhere, hardness);
  const atSomePlaces = report.ruleOuts.filter(
    (ruleOut) => ruleOut.hardness === hardness && !everywhere.includes(ruleOut),
  );
  const count = told.length === 1 ? "1 reason" : `${told.length} reasons, each by itself`;
  const item = (ruleOut: RuleOut) => (
    <RuleOutItem
      key={ruleOut.id}
      hardness={ruleOut.hardness}
      said={words.ruleOuts.find((one) => one.id === ruleOut.id)}
      glossary={glossary}
    />
  );
  return (
    <section id={hardness === "physical" ? "rules-out" : undefined} aria-label={title}>
      <h2 className={styles["heading"]}>
        {title} {told.length > 0 ? <span>· {count}</span> : null}
      </h2>
      {told.length + following.length === 0 ? <p className={styles["none"]}>{none}</p> : null}
      <ul>{told.map(item)}</ul>
      {atSomePlaces.length > 0 ? (
        <div className={styles["following"]}>
          <KeptDisclosure
            name={`${hardness} at some places`}
            summary={`${atSomePlaces.length} only at some of the places it can be from, as no region is claimed or a wide one`}
          >
            <ul>{atSomePlaces.map(item)}</ul>
          </KeptDisclosure>
        </div>
      ) : null}
      {following.length > 0 ? (
        <div className={styles["following"]}>
          <KeptDisclosure
            name={`${hardness} that follow`}
            summary={`${following.length} more that ${following.length === 1 ? "follows" : "follow"} from what is told already`}
          >
            <ul>{following.map(item)}</ul>
          </KeptDisclosure>
        </div>
      ) : null}
    </section>
  );
}

interface ItemProps {
  hardness: Hardness;
  said: ReportWords["ruleOuts"][number] | undefined;
  glossary: Glossary;
}

/** One rule-out. The chain of a hard one is in sight; that of a soft one unfolds. */
const RuleOutItem = memo(function RuleOutItem({ hardness, said, glossary }: ItemProps) {
  if (!said) return null;
  const isHard = hardness === "physical";
  const steps = <Steps steps={said.steps} glossary={glossary} />;
  return (
    <li className={styles["why"]}>
      <p className={styles["says"]}>
        <RowMark mark={isHard ? "against-hard" : "against-soft"} />
        <span>{said.says}</span>
      </p>
      <div className={styles["rest"]}>
        {isHard || said.steps.length <= 2 ? (
          steps
        ) : (
          <KeptDisclosure name={said.id} level={3} summary={`Why, in ${said.steps.length} steps`}>
            {steps}
          </KeptDisclosure>
        )}
      </div>
    </li>
  );
});
