import { useId } from "react";
import field from "./Field.module.css";
import styles from "./RangeField.module.css";

interface Props {
  label: string;
  /** What the label is of, for those who do not see where it stands. */
  of?: string;
  value: number;
  min: number;
  max: number;
  step: number;
  /** The value in words: what is read out, and stands beside the label. */
  says: string;
  /** What is assumed as long as nothing is chosen, in words; stands beside a value that differs. */
  assumed?: string | undefined;
  onChange: (value: number) => void;
}

/** A number set by hand on a line, with what it means in words. The browser's own, with its keys. */
export function RangeField({ label, of, value, min, max, step, says, assumed, onChange }: Props) {
  const id = useId();
  return (
    <div className={field["field"]}>
      <div className={styles["words"]}>
        <label htmlFor={id}>
          {of === undefined ? null : <span className="visually-hidden">{of}, </span>}
          {label}
        </label>
        <span className={styles["value"]}>
          {says}
          {assumed === undefined ? null : <span className={styles["assumed"]}> (assumed: {assumed})</span>}
        </span>
      </div>
      <input
        id={id}
        type="range"
        className={`screen-only ${styles["range"]}`}
        {...{ min, max, step }}
        value={Math.min(max, Math.max(min, value))}
        aria-valuetext={says}
        onChange={({ target }) => onChange(Number(target.value))}
      />
    </div>
  );
}
