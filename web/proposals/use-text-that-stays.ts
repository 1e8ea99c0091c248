import { useState } from "react";

interface Kept {
  readonly text: string;
  readonly type: (text: string) => void;
  /** What was kept meanwhile from another window, where it differs from what is typed here. */
  readonly elsewhere: string | undefined;
}

/** A text that is kept elsewhere and typed over here: what comes from elsewhere is taken until something was typed, and never in its place. */
export function useTextThatStays(stands: string): Kept {
  const [from, setFrom] = useState(stands);
  const [text, type] = useState(stands);
  const [elsewhere, setElsewhere] = useState<string>();
  if (stands !== from) {
    setFrom(stands);
    if (text === from) type(stands);
    setElsewhere(text === from || text.trim() === stands.trim() ? undefined : stands);
  }
  return { text, type, elsewhere: elsewhere === text ? undefined : elsewhere };
}
