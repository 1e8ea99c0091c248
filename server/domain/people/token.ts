import type { Card, CardWrite } from "../card.ts";
import type { Role } from "./caller.ts";

/** What a script of somebody's gets in with. Its card's id is the hash of what the script holds. */
export interface Token {
  readonly person: string;
  /** Never more than the person's own, which is looked at with each request. */
  readonly role: Role;
  /** What it is for, in its maker's words. */
  readonly label: string;
  /** ISO 8601 times in UTC. */
  readonly madeAt: string;
  readonly until: string;
}
export const TOKEN_CARD = "token";
/** Days that one holds at most. */
export const LONGEST_TOKEN = 365;

export const tokenOf = ({ body }: Card): Token => body as Token;

export const tokenWrite = (id: string, token: Token): CardWrite => ({
  ...{ kind: TOKEN_CARD, id, expectedVersion: 0 },
  next: { keys: { person: [token.person] }, body: token },
});
