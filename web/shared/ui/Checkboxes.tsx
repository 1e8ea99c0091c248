import { Checkbox } from "react-aria-components/Checkbox";
import { CheckboxGroup } from "react-aria-components/CheckboxGroup";
import { Label } from "react-aria-components/Label";
import styles from "./Checkboxes.module.css";

interface Props {
  label: string;
  choices: readonly { readonly id: string; readonly label: string }[];
  value: readonly string[];
  onChange: (value: readonly string[]) => void;
  refusal?: string | undefined;
}

/** Any of a few, all in sight. */
export const Checkboxes = ({ label, choices, value, onChange, refusal }: Props) => (
  <CheckboxGroup value={[...value]} onChange={onChange} className={styles["checks"] ?? ""}>
    <Label className={styles["label"] ?? ""}>{label}</Label>
    {choices.map((choice) => (
      <Checkbox key={choice.id} value={choice.id} className={styles["check"] ?? ""}>
        <span aria-hidden="true" className={styles["box"]} /> {choice.label}
      </Checkbox>
    ))}
    {refusal === undefined ? null : <p className={styles["refusal"]}>{refusal}</p>}
  </CheckboxGroup>
);
