import { TextField } from "../shared/ui/TextField.tsx";

interface Props {
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** The password, said again before something that one signs in with is changed. */
export const PasswordAgain = (props: Props) => (
  <TextField {...props} label="Your password" type="password" autoComplete="current-password" isRequired />
);

/** A code of a device, or a recovery code. */
export const CodeField = ({
  hint = "The six digits that your device shows, or a recovery code.",
  ...props
}: Props & { hint?: string; autoFocus?: boolean }) => (
  <TextField {...props} label="Code" hint={hint} autoComplete="one-time-code" isRequired />
);
