import { RadioGroup } from "#web/shared/ui/RadioGroup.tsx";
import { Select } from "#web/shared/ui/Select.tsx";
import { useFormDesk } from "./form-desk.ts";
import styles from "./writing.module.css";

interface Props {
  of: string;
  label: string;
  choices: readonly { readonly id: string; readonly label: string; readonly beside?: string }[];
  /** What holds where nothing is chosen. */
  otherwise?: string;
  /** All in sight, or folded up. */
  look?: "column" | "folded";
  /** Where a heading says it already. */
  isLabelHidden?: boolean;
}

/** A field of the form that holds one of a few. */
export function ChoiceField({
  of,
  label,
  choices,
  otherwise,
  look = "column",
  isLabelHidden = false,
}: Props) {
  const { fields, put, refusalAt } = useFormDesk();
  const value = fields[of]?.trim() || otherwise || null;
  const refusal = refusalAt(of);
  const onChange = (chosen: string) => put({ [of]: chosen });
  return (
    <div data-refused={refusal !== undefined}>
      {look === "folded" ? (
        <Select label={label} choices={choices} value={value} onChange={onChange} placeholder="choose" />
      ) : (
        <RadioGroup
          label={label}
          isLabelHidden={isLabelHidden}
          direction="column"
          choices={choices}
          value={value}
          onChange={onChange}
        />
      )}
      {refusal === undefined ? null : <p className={styles["refusal"]}>{refusal}</p>}
    </div>
  );
}
