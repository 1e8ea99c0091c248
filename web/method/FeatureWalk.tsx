import { useState } from "react";
import { AnswerInStrips } from "../answers/AnswerInStrips.tsx";
import { useAnswer } from "../answers/use-answer.ts";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import styles from "./MethodPage.module.css";
import { Walk } from "./Walk.tsx";
import { FEATURES_TO_WALK, type FeatureToWalk } from "./walks.ts";

const [FIRST] = FEATURES_TO_WALK as readonly [FeatureToWalk, ...FeatureToWalk[]];

/** One feature, chosen from a few, walked step by step to its years, and the strip that comes of it. */
export function FeatureWalk() {
  const [chosen, choose] = useState(FIRST);
  const answer = useAnswer(chosen.piece);
  const finding =
    answer.kind === "examined" ? answer.report.findings.find(({ id }) => id === "seen") : undefined;
  return (
    <div className={styles["live"]}>
      <RadioGroup
        label="Walk another feature"
        direction="column"
        choices={FEATURES_TO_WALK.map(({ id, says }) => ({ id, label: says }))}
        value={chosen.id}
        onChange={(id) => choose(FEATURES_TO_WALK.find((one) => one.id === id) ?? FIRST)}
      />
      {answer.kind === "examined" && finding ? <Walk finding={finding} glossary={answer.glossary} /> : null}
      <p>And as a strip, on a piece claimed to be of 1760 to 1780:</p>
      <AnswerInStrips answer={answer} hasLegend />
    </div>
  );
}
