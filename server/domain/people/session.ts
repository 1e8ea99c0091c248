import type { Card, CardWrite } from "../card.ts";
import type { Entry } from "./entry.ts";

/** A browser that somebody signed in with. Its card's id is the hash of what the browser holds. */
export interface Session {
  readonly person: string;
  /** ISO 8601 times in UTC; `seenAt` is at most `SEEN_EVERY` behind. */
  readonly madeAt: string;
  readonly seenAt: string;
  /** What it took to sign in: a password alone, or two things of which one alone does not do. */
  readonly steps: 1 | 2;
  /** How often all of the person's had been ended when signing in began (`Entry`); left out, never. */
  readonly ended?: number;
}
export const SESSION_CARD = "session";

const MINUTE = 60_000;
/** Milliseconds without a request after which it ends; from the sign-in, whatever happens; between two notes of a request. */
export const LONGEST_IDLE = 8 * 60 * MINUTE;
export const LONGEST_SESSION = 7 * 24 * 60 * MINUTE;
export const SEEN_EVERY = 5 * MINUTE;

export const sessionOf = ({ body }: Card): Session => body as Session;

export const sessionWrite = (id: string, expectedVersion: number, session: Session): CardWrite => ({
  ...{ kind: SESSION_CARD, id, expectedVersion },
  next: { keys: { person: [session.person] }, body: session },
});

/** Whether its time is not over. */
export const isInTime = ({ madeAt, seenAt }: Session, now: string): boolean =>
  Date.parse(now) - Date.parse(madeAt) < LONGEST_SESSION &&
  Date.parse(now) - Date.parse(seenAt) < LONGEST_IDLE;

/** Whether it was ended with all others of the person. */
export const wasEnded = (session: Session, { ended }: Entry): boolean => (session.ended ?? 0) < ended;

/** Whether a session still holds: its time is not over, and all of the person's were not ended since signing in began. */
export const isLive = (session: Session, { ended }: Entry, now: string): boolean =>
  isInTime(session, now) && (session.ended ?? 0) === ended;

/** Whether it is time to note that it is used. */
export const isToBeNoted = ({ seenAt }: Session, now: string): boolean =>
  Date.parse(now) - Date.parse(seenAt) >= SEEN_EVERY;
