import { useCallback, useEffect, useState } from "react";
import { type Answered, askServer } from "./ask-server.ts";

/** What the server says to a question, undefined until it came; `again` asks anew. The question is asked again when its text is another. */
export function useAnswer<Body>(
  path: string,
  input: object = {},
): { readonly answer: Answered<Body> | undefined; readonly again: () => Promise<void> } {
  const question = JSON.stringify(input);
  const [answer, setAnswer] = useState<Answered<Body>>();
  const again = useCallback(
    async () => setAnswer(await askServer<Body>(path, JSON.parse(question))),
    [path, question],
  );
  useEffect(() => {
    let isWanted = true;
    askServer<Body>(path, JSON.parse(question)).then((came) => {
      if (isWanted) setAnswer(came);
    });
    return () => {
      isWanted = false;
    };
  }, [path, question]);
  return { answer, again };
}
