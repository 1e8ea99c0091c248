import { useCallback, useEffect, useRef, useState } from "react";

type Kept = Readonly<Record<string, unknown>>;

const stateNow = (): Kept =>
  typeof window.history.state === "object" && window.history.state !== null ? window.history.state : {};
const addressNow = () => window.location.pathname + window.location.search;

/**
 * State that stays with the place in the browser's history: who goes back finds it as it was left, who comes anew begins
 * with `initial`. The value is kept as it is, so it has to be plain. `name` is its own on the page; without one nothing is kept.
 */
export function useKeptState<Value>(
  name: string | undefined,
  initial: Value,
): readonly [Value, (change: (before: Value) => Value) => void] {
  const [value, setValue] = useState<Value>(
    () => (name === undefined ? undefined : (stateNow()[name] as Value | undefined)) ?? initial,
  );
  const [address] = useState(addressNow);
  const saved = useRef(value);
  useEffect(() => {
    // While the next page is on its way this one still stands, but the history is ahead of it.
    if (name === undefined || value === saved.current || addressNow() !== address) return;
    saved.current = value;
    window.history.replaceState({ ...stateNow(), [name]: value }, "");
  }, [name, value, address]);
  const change = useCallback((how: (before: Value) => Value) => setValue(how), []);
  return [value, change];
}
