import { useEffect, useState } from "react";
import { TextField } from "../shared/ui/TextField.tsx";
import { isYear } from "./search-filter.ts";

interface Props {
  label: string;
  value: number | undefined;
  onChange: (year: string) => void;
  /** Why the year does not go with the other. */
  refusal?: string | undefined;
}

/** A year that narrows a search; it counts as soon as it is whole. */
export function YearFilterField({ label, value, onChange, refusal }: Props) {
  const [text, setText] = useState(value === undefined ? "" : `${value}`);
  useEffect(() => setText(value === undefined ? "" : `${value}`), [value]);
  const [isLeft, setIsLeft] = useState(false);
  const why = isLeft && text !== "" && !isYear(text) ? "Write a year, such as 1760." : refusal;
  return (
    <TextField
      label={label}
      value={text}
      onChange={(typed) => {
        const next = typed.trim();
        setText(next);
        setIsLeft(false);
        if (next === "" || isYear(next)) onChange(next);
      }}
      onBlur={() => setIsLeft(true)}
      {...(why === undefined ? {} : { refusal: why })}
      inputMode="numeric"
      autoComplete="off"
    />
  );
}
