import type { ReactNode } from "react";
import type { Dating, Role } from "#server/domain/dating.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import { Button } from "./Button.tsx";
import styles from "./DatingField.module.css";
import { TextField } from "./TextField.tsx";

interface Props {
  label: string;
  value: string;
  datingRole: Role;
  onType: (text: string) => void;
  /** When the field is left, on Enter, and when an offered reading is taken. */
  onKeep?: (date: string) => void;
  /** How a date is understood, in words. */
  say: (dating: Dating) => string;
  /** Stands below an empty field. */
  hint?: ReactNode;
  /** Why a date that can be read is refused all the same. */
  refusal?: string | undefined;
  mayBeEmpty?: boolean;
}

const EXAMPLES = "About is 1765~, a span 1760/1780, a decade 176X.";

/** A date. Says while one types how it is read, or why not, and offers what was probably meant. */
export function DatingField({
  label,
  value,
  datingRole,
  onType,
  onKeep,
  say,
  hint,
  refusal,
  mayBeEmpty = false,
}: Props) {
  const text = value.trim();
  const isEmpty = text === "" && mayBeEmpty;
  const dating = readDating(text, datingRole);
  const unreadable = !isEmpty && isProblem(dating) ? dating : undefined;
  const told = unreadable?.message ?? refusal;
  const offered = unreadable?.instead;
  const take = (date: string) => {
    onType(date);
    onKeep?.(date);
  };
  return (
    <div>
      <TextField
        label={label}
        value={value}
        onChange={onType}
        onBlur={() => onKeep?.(text)}
        onKeyDown={(event) => event.key === "Enter" && onKeep?.(text)}
        hint={
          isEmpty
            ? (hint ?? EXAMPLES)
            : isProblem(dating)
              ? undefined
              : `Read as: ${say(dating)}. ${EXAMPLES}`
        }
        {...(told === undefined ? {} : { refusal: told })}
        autoComplete="off"
        spellCheck="false"
      />
      {offered ? (
        <span className={styles["offer"]}>
          <Button onPress={() => take(offered)}>Take {offered}</Button>
        </span>
      ) : null}
    </div>
  );
}
