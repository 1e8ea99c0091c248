import { TextField } from "../shared/ui/TextField.tsx";

interface Props {
  label?: string;
  hint?: string;
  value: string;
  onChange: (password: string) => void;
}

/** Where a password is chosen, with what it has to be; a program that keeps passwords is told that it is a new one. */
export const NewPasswordField = ({
  label = "Password",
  hint = "At least 12 characters of any kind. Some words one after the other are easy to keep in mind.",
  ...rest
}: Props) => (
  <TextField label={label} hint={hint} type="password" autoComplete="new-password" isRequired {...rest} />
);
