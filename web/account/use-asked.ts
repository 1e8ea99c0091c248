import { useCallback, useEffect, useState } from "react";
import { type Answered, askAccount } from "./ask-account.ts";

/** What the server says to a question, undefined until it came; `again` asks anew. */
export function useAsked<Body>(action: string): {
  readonly answer: Answered<Body> | undefined;
  readonly again: () => Promise<void>;
} {
  const [answer, setAnswer] = useState<Answered<Body>>();
  const again = useCallback(async () => setAnswer(await askAccount<Body>(action)), [action]);
  useEffect(() => {
    let isWanted = true;
    askAccount<Body>(action).then((came) => {
      if (isWanted) setAnswer(came);
    });
    return () => {
      isWanted = false;
    };
  }, [action]);
  return { answer, again };
}
