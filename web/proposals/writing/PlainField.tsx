import { TextField } from "#web/shared/ui/TextField.tsx";
import { useFormDesk } from "./form-desk.ts";

interface Props {
  of: string;
  label: string;
  hint?: string;
  placeholder?: string;
  lines?: number;
}

/** A field of the form that holds text. */
export function PlainField({ of, label, hint, placeholder = "", lines = 1 }: Props) {
  const { fields, put, refusalAt } = useFormDesk();
  const refusal = refusalAt(of);
  return (
    <TextField
      label={label}
      value={fields[of] ?? ""}
      onChange={(text) => put({ [of]: text })}
      placeholder={placeholder}
      lines={lines}
      maxLength={5000}
      autoComplete="off"
      {...(hint === undefined ? {} : { hint })}
      {...(refusal === undefined ? {} : { refusal })}
    />
  );
}
