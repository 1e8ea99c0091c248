import { useAnswer } from "../shared/asking/use-answer.ts";

/** What the server says to a question about accounts, undefined until it came; `again` asks anew. */
export const useAsked = <Body>(action: string) => useAnswer<Body>(`/account/${action}`);
