import { useState } from "react";
import { ComboBox as AriaComboBox } from "react-aria-components/ComboBox";
import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { ListBox, ListBoxItem } from "react-aria-components/ListBox";
import { Popover } from "react-aria-components/Popover";
import styles from "./Field.module.css";
import type { Choice } from "./Select.tsx";

interface Props {
  label: string;
  choices: readonly Choice<string>[];
  words: string;
  onWords: (words: string) => void;
  /** The box is empty again afterwards, ready for the next. */
  onChoose: (choice: Choice<string>) => void;
  /** False for a choice that leads elsewhere and takes the focus along. */
  keepsFocus?: (choice: Choice<string>) => boolean;
  /** What is said above the choices. */
  says?: string;
  placeholder?: string;
  none?: string;
  /** The caller still searches: that there is nothing is not known yet. */
  isLooking?: boolean;
}

/** Adds one thing after another out of a long list: it offers at once, takes the choice and keeps none itself. */
export function SuggestBox({
  label,
  choices,
  words,
  onWords,
  onChoose,
  keepsFocus = () => true,
  says,
  placeholder = "",
  none = "Nothing by these words. Try fewer, or a broader term.",
  isLooking = false,
}: Props) {
  const [round, setRound] = useState(0);
  const [hasFocus, setHasFocus] = useState(false);
  /** Of a hundred choices none is made before somebody comes near the field. */
  const [isWanted, setWanted] = useState(false);
  /** Right after a choice the list stays closed, so that one sees what came of it; typing opens it again. */
  const [hasJustChosen, setHasJustChosen] = useState(false);
  return (
    <AriaComboBox
      key={round}
      autoFocus={hasFocus}
      className={styles["field"] ?? ""}
      items={isWanted ? choices : []}
      onFocus={() => setWanted(true)}
      inputValue={words}
      onInputChange={onWords}
      value={null}
      onChange={(key) => {
        const chosen = choices.find((choice) => choice.id === key);
        if (!chosen) return;
        onChoose(chosen);
        setRound(round + 1);
        setHasFocus(keepsFocus(chosen));
        setHasJustChosen(true);
      }}
      onBlur={() => setHasJustChosen(false)}
      allowsEmptyCollection
      menuTrigger={hasJustChosen ? "input" : "focus"}
    >
      <Label className={styles["label"] ?? ""}>{label}</Label>
      <Input className={styles["input"] ?? ""} placeholder={placeholder} />
      <Popover className={styles["popover"] ?? ""}>
        {says === undefined ? null : (
          <p className={styles["none"]} role="status">
            {says}
          </p>
        )}
        <ListBox<Choice<string>>
          className={styles["list"] ?? ""}
          renderEmptyState={() => <p className={styles["none"]}>{isLooking ? "Looking …" : none}</p>}
        >
          {(choice) => (
            <ListBoxItem id={choice.id} textValue={choice.label} className={styles["option"] ?? ""}>
              <span>{choice.label}</span>
              {choice.beside ? <span className={styles["beside"]}>{choice.beside}</span> : null}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </AriaComboBox>
  );
}
