import type { ReactNode } from "react";
import { FieldError } from "react-aria-components/FieldError";
import { Input } from "react-aria-components/Input";
import { Label } from "react-aria-components/Label";
import { Text } from "react-aria-components/Text";
import { TextArea } from "react-aria-components/TextArea";
import { TextField as AriaTextField, type TextFieldProps } from "react-aria-components/TextField";
import styles from "./Field.module.css";

interface Props extends Omit<TextFieldProps, "children" | "className" | "style"> {
  label: string;
  /** What may be written, or how what is written is read. */
  hint?: ReactNode;
  /** Why it is refused and what to do; the field is invalid while it is given. */
  refusal?: ReactNode;
  /** More than one line. */
  lines?: number;
  placeholder?: string;
}

/** One line of text, or several. */
export const TextField = ({ label, hint, refusal, lines = 1, placeholder = "", ...rest }: Props) => (
  <AriaTextField {...rest} isInvalid={refusal !== undefined} className={styles["field"] ?? ""}>
    <Label className={styles["label"] ?? ""}>{label}</Label>
    {lines > 1 ? (
      <TextArea className={styles["input"] ?? ""} rows={lines} placeholder={placeholder} />
    ) : (
      <Input className={styles["input"] ?? ""} placeholder={placeholder} />
    )}
    {hint === undefined ? null : (
      <Text slot="description" className={styles["hint"] ?? ""}>
        {hint}
      </Text>
    )}
    <FieldError className={styles["refusal"] ?? ""}>{refusal}</FieldError>
  </AriaTextField>
);
