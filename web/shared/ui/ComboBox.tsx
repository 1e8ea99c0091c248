import type { ReactNode } from "react";
import { ComboBox as AriaComboBox } from "react-aria-components/ComboBox";
import { FieldError } from "react-aria-components/FieldError";
import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { ListBox, ListBoxItem } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import { Text } from "react-aria-components/Text";
import styles from "./Field.module.css";
import type { Choice } from "./Select.tsx";

interface Props<Id extends string> {
  label: string;
  /** What is offered for the words typed so far: the caller searches. */
  choices: readonly Choice<Id>[];
  words: string;
  onWords: (words: string) => void;
  value: Id | null;
  /** Null when the field is emptied. */
  onChange: (value: Id | null) => void;
  hint?: ReactNode;
  refusal?: ReactNode;
  placeholder?: string;
  /** What the list says when nothing fits. */
  none?: string;
  /** The caller still searches: that there is nothing is not known yet. */
  isLooking?: boolean;
  isDisabled?: boolean;
  /** Marks what is shown beside a choice apart from its name. */
  renderChoice?: (choice: Choice<Id>) => ReactNode;
}

const plainChoice = <Id extends string>(choice: Choice<Id>) => (
  <>
    <span>{choice.label}</span>
    {choice.beside ? <span className={styles["beside"]}>{choice.beside}</span> : null}
  </>
);

/** One of a long list, found by typing. */
export const ComboBox = <Id extends string>({
  label,
  choices,
  words,
  onWords,
  value,
  onChange,
  hint,
  refusal,
  placeholder = "",
  none = "Nothing by these words. Try fewer, or a broader term.",
  isLooking = false,
  isDisabled = false,
  renderChoice = plainChoice,
}: Props<Id>) => (
  <AriaComboBox
    className={styles["field"] ?? ""}
    items={choices}
    inputValue={words}
    onInputChange={onWords}
    value={value}
    onChange={(key) => {
      if (key === null) onChange(null);
      const chosen = choices.find((choice) => choice.id === key);
      if (chosen) onChange(chosen.id);
    }}
    allowsEmptyCollection
    menuTrigger="input"
    isDisabled={isDisabled}
    isInvalid={refusal !== undefined}
  >
    <Label className={styles["label"] ?? ""}>{label}</Label>
    <Input className={styles["input"] ?? ""} placeholder={placeholder} />
    {hint === undefined ? null : (
      <Text slot="description" className={styles["hint"] ?? ""}>
        {hint}
      </Text>
    )}
    <FieldError className={styles["refusal"] ?? ""}>{refusal}</FieldError>
    <Popover className={styles["popover"] ?? ""}>
      <ListBox<Choice<Id>>
        className={styles["list"] ?? ""}
        renderEmptyState={() => <p className={styles["none"]}>{isLooking ? "Looking …" : none}</p>}
      >
        {(choice) => (
          <ListBoxItem id={choice.id} textValue={choice.label} className={styles["option"] ?? ""}>
            {renderChoice(choice)}
          </ListBoxItem>
        )}
      </ListBox>
    </Popover>
  </AriaComboBox>
);
