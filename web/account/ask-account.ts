import { type Answered as AnsweredBy, askServer } from "../shared/asking/ask-server.ts";

/** What the server answered: what was asked for, or why not, each with the field it belongs to. */
export type Answered<Body> = AnsweredBy<Body>;

/** Asks for something that has to do with accounts (docs/spec/21-people.md). Who is not signed in any more goes to do so. */
export const askAccount = <Body = object>(action: string, input: object = {}): Promise<Answered<Body>> =>
  askServer<Body>(`/account/${action}`, input);

export interface Caller {
  readonly id: string;
  readonly role: "reader" | "contributor" | "reviewer" | "owner";
  /** The role asks for a second step, and there was none. */
  readonly isHeld?: boolean;
}
export interface Who {
  readonly accounts: boolean;
  readonly caller: Caller | null;
  /** What the other provider is called that one can sign in at. */
  readonly provider?: string | null;
}

/** A path of this site that somebody wanted to go to; anything else is the start. */
export function pathToGoTo(search: string): string {
  const to = new URLSearchParams(search).get("to") ?? "/";
  return /^\/(?![/\\])/.test(to) ? to : "/";
}
