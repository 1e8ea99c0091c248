import { useState } from "react";
import { Label } from "react-aria-components/Label";
import { Radio, RadioGroup } from "react-aria-components/RadioGroup";
import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "../drawings/FeatureDrawing.tsx";
import { Button } from "../shared/ui/Button.tsx";
import type { Lesson } from "./lesson.ts";
import styles from "./Question.module.css";

interface Props {
  lesson: Pick<Lesson, "question" | "choices">;
  /** Asked for the answer, with the choice made. */
  onAsk: (choice: string) => void;
}

const SMALL = 88;

/** The question with its choices. Nothing is told before it is asked for, so that the arrow keys can go through them. */
export function Question({ lesson: { question, choices }, onAsk }: Props) {
  const [chosen, choose] = useState<string | null>(null);
  return (
    <section className={styles["question"]} aria-label="Question">
      <RadioGroup className={styles["group"] ?? ""} value={chosen} onChange={choose}>
        <Label className={styles["label"] ?? ""}>{question}</Label>
        <div className={styles["choices"]} data-drawn={choices.some((choice) => choice.drawing)}>
          {choices.map((choice) => (
            <Radio key={choice.id} value={choice.id} className={styles["choice"] ?? ""}>
              <span className={styles["ring"]} aria-hidden="true" />
              {choice.drawing ? (
                <span className={styles["drawing"]} aria-hidden="true">
                  <FeatureDrawing term={id<"term">(choice.drawing)} size={SMALL} />
                </span>
              ) : null}
              <span>{choice.says}</span>
            </Radio>
          ))}
        </div>
      </RadioGroup>
      <p className="screen-only">
        <Button look="main" isDisabled={chosen === null} onPress={() => chosen !== null && onAsk(chosen)}>
          See what the evidence says
        </Button>
      </p>
    </section>
  );
}
