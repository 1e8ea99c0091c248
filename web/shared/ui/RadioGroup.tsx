import { Label } from "react-aria-components/Label";
import { RadioGroup as AriaRadioGroup, Radio } from "react-aria-components/RadioGroup";
import field from "./Field.module.css";
import styles from "./RadioGroup.module.css";
import type { Choice } from "./Select.tsx";

interface Props<Id extends string> {
  label: string;
  choices: readonly Choice<Id>[];
  value: Id | null;
  onChange: (value: Id) => void;
  /** Side by side where there is room, or one below the other. */
  direction?: "row" | "column";
  /** Keeps the label for screen readers only, where a heading says it already. */
  isLabelHidden?: boolean;
  /** Shows what is chosen, keeps the focus and takes no other: while it is being stored. */
  isReadOnly?: boolean;
}

/** One of a few, all in sight. */
export const RadioGroup = <Id extends string>({
  label,
  choices,
  value,
  onChange,
  direction = "row",
  isLabelHidden = false,
  isReadOnly = false,
}: Props<Id>) => (
  <AriaRadioGroup
    className={field["field"] ?? ""}
    value={value}
    onChange={(key) => {
      const chosen = choices.find((choice) => choice.id === key);
      if (chosen) onChange(chosen.id);
    }}
    orientation={direction === "row" ? "horizontal" : "vertical"}
    isReadOnly={isReadOnly}
  >
    <Label className={isLabelHidden ? "visually-hidden" : (field["label"] ?? "")}>{label}</Label>
    <div className={styles[direction]}>
      {choices.map((choice) => (
        <Radio key={choice.id} value={choice.id} className={styles["radio"] ?? ""}>
          <span className={styles["ring"]} aria-hidden="true" />
          <span className={styles["words"]}>
            <span>{choice.label}</span>
            {choice.beside ? <span className={styles["beside"]}>{choice.beside}</span> : null}
          </span>
        </Radio>
      ))}
    </div>
  </AriaRadioGroup>
);
