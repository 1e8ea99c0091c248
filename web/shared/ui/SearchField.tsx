import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { SearchField as AriaSearchField, type SearchFieldProps } from "react-aria-components/SearchField";
import { Text } from "react-aria-components/Text";
import styles from "./Field.module.css";

interface Props extends Omit<SearchFieldProps, "children" | "className" | "style"> {
  label: string;
  hint?: string;
}

/** Words to search for; Escape empties it. */
export const SearchField = ({ label, hint, ...rest }: Props) => (
  <AriaSearchField {...rest} className={styles["field"] ?? ""}>
    <Label className={styles["label"] ?? ""}>{label}</Label>
    <Input className={styles["input"] ?? ""} />
    {hint === undefined ? null : (
      <Text slot="description" className={styles["hint"] ?? ""}>
        {hint}
      </Text>
    )}
  </AriaSearchField>
);
