import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./reading.module.css";

interface Props {
  /** From the widest to the nearest. */
  steps: readonly { readonly to?: string; readonly name: string }[];
}

/** The line over a heading: where the thing stands. */
export const Kicker = ({ steps }: Props) => (
  <nav aria-label="Where it stands" className={styles["kicker"]}>
    <ol>
      {steps.map(({ to, name }) => (
        <li key={`${to} ${name}`}>{to ? <TextLink to={to}>{name}</TextLink> : name}</li>
      ))}
    </ol>
  </nav>
);
