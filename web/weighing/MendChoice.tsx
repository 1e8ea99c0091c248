import { memo } from "react";
import { Label } from "react-aria-components/Label";
import { Radio, RadioGroup } from "react-aria-components/RadioGroup";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import radio from "#web/shared/ui/RadioGroup.module.css";
import type { StoryRow } from "./tell-story.ts";
import styles from "./Weighing.module.css";

interface Props {
  row: StoryRow;
  onChoose: (row: string, option: string) => void;
}

/** Ways to save a part that are in sight at once; the dearer ones unfold. */
const IN_SIGHT = 3;

/** For one part, one of several: each a sentence with how much it gives up. */
export const MendChoice = memo(function MendChoice({ row, onChoose }: Props) {
  const at = row.options.findIndex(({ key }) => key === row.chosen);
  const folded = row.options.length - IN_SIGHT;
  const choice = (option: StoryRow["options"][number]) => (
    <Radio key={option.key} value={option.key} className={`${radio["radio"]} ${styles["option"]}`}>
      <span className={radio["ring"]} aria-hidden="true" />
      <span>
        {option.says} <span className={styles["price"]}>{option.price}</span>
        {option.alsoSaves.length > 0 ? (
          <span className={styles["also"]}>
            {" "}
            The same would do for {option.alsoSaves.join(" and ")}, and counts once.
          </span>
        ) : null}
      </span>
    </Radio>
  );
  return (
    <RadioGroup
      className={styles["choice"] ?? ""}
      value={row.chosen}
      onChange={(option) => onChoose(row.key, option)}
    >
      <Label className={styles["of"] ?? ""}>
        {row.name.charAt(0).toUpperCase() + row.name.slice(1)}, one of:
      </Label>
      {row.options.slice(0, IN_SIGHT).map(choice)}
      {folded > 0 ? (
        <Disclosure
          level={3}
          isOpenAtFirst={at >= IN_SIGHT}
          summary={`${folded} more that ask more${at >= IN_SIGHT ? ", the chosen one among them" : ""}`}
        >
          {row.options.slice(IN_SIGHT).map(choice)}
        </Disclosure>
      ) : null}
    </RadioGroup>
  );
});
