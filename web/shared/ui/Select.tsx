import { Button } from "react-aria-components/Button";
import { Label } from "react-aria-components/Label";
import { ListBox, ListBoxItem } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import { Select as AriaSelect, SelectValue } from "react-aria-components/Select";
import styles from "./Field.module.css";
import own from "./Select.module.css";

export interface Choice<Id extends string> {
  readonly id: Id;
  readonly label: string;
  /** A few words that tell it from the others. */
  readonly beside?: string;
}

interface Props<Id extends string> {
  label: string;
  choices: readonly Choice<Id>[];
  value: Id | null;
  onChange: (value: Id) => void;
  placeholder?: string;
  isDisabled?: boolean;
}

/** One of a short, fixed list. For a long one take `ComboBox`. */
export const Select = <Id extends string>({
  label,
  choices,
  value,
  onChange,
  placeholder = "not stated",
  isDisabled = false,
}: Props<Id>) => (
  <AriaSelect
    className={styles["field"] ?? ""}
    value={value}
    onChange={(key) => {
      const chosen = choices.find((choice) => choice.id === key);
      if (chosen) onChange(chosen.id);
    }}
    placeholder={placeholder}
    isDisabled={isDisabled}
  >
    <Label className={styles["label"] ?? ""}>{label}</Label>
    <Button className={`${styles["input"]} ${own["face"]}`}>
      <SelectValue className={own["value"] ?? ""} />
      <svg className={own["arrow"]} viewBox="0 0 10 6" aria-hidden="true">
        <path d="M1 1l4 4 4-4" />
      </svg>
    </Button>
    <Popover className={styles["popover"] ?? ""}>
      <ListBox className={styles["list"] ?? ""} items={choices}>
        {(choice) => (
          <ListBoxItem id={choice.id} textValue={choice.label} className={styles["option"] ?? ""}>
            <span>{choice.label}</span>
            {choice.beside ? <span className={styles["beside"]}>{choice.beside}</span> : null}
          </ListBoxItem>
        )}
      </ListBox>
    </Popover>
  </AriaSelect>
);
