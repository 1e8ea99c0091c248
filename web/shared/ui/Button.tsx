import { Button as AriaButton, type ButtonProps } from "react-aria-components/Button";
import styles from "./Button.module.css";

interface Props extends Omit<ButtonProps, "className" | "style"> {
  /** main: the thing to do here. plain: any other. quiet: beside a line of text. */
  look?: "main" | "plain" | "quiet";
}

/** A button. Its label is a verb. */
export const Button = ({ look = "plain", ...rest }: Props) => (
  <AriaButton {...rest} className={[styles["button"], styles[look]].filter(Boolean).join(" ")} />
);
