import { type Problem, problem } from "../problem.ts";
import { type Caller, ROLES, type Role } from "./caller.ts";

/** Everything that can be asked for, with the least role that may, where the thing itself does not forbid it. */
export const LEAST_ROLE = {
  "read the graph": "reader",
  "read an examination": "reader",
  "read a proposal": "reader",
  "follow something": "reader",
  "manage one's own account": "reader",
  "talk about a proposal": "contributor",
  "record an examination": "contributor",
  "change an examination": "contributor",
  "say who sees an examination": "contributor",
  "make a proposal": "contributor",
  "change a proposal": "contributor",
  "dispute a claim": "contributor",
  "take back a dispute": "contributor",
  "ask for a token": "contributor",
  "give what was accepted to another house": "reader",
  "bring in proposals of another house": "contributor",
  "decide on a proposal": "reviewer",
  "end a dispute": "reviewer",
  "withdraw what was accepted": "reviewer",
  "sign a checkpoint": "owner",
  "see the people": "reader",
  "manage people": "owner",
  "read the audit": "owner",
} as const satisfies Record<string, Role>;
export type Action = keyof typeof LEAST_ROLE;

/** What has to be known of a thing to tell who may do something with it. */
export interface About {
  /** The person who made it. */
  readonly by?: string;
  /** Persons it is shown to besides; `house` is everybody. Left out: everybody. */
  readonly seenBy?: readonly string[];
  /** True if several people share the house: then nobody decides on what is their own. */
  readonly isShared?: boolean;
}

/**
 * The one place that says who may do what. Nothing if the caller may; else `NOT_SIGNED_IN` or `NOT_ALLOWED`. A thing that is not
 * shown to the caller is answered by whoever asks as if it were not there.
 */
export function mayDo(caller: Caller | undefined, action: Action, about: About = {}): Problem | undefined {
  if (caller === undefined)
    return problem("NOT_SIGNED_IN", `Sign in first: one cannot ${action} here without an account.`);
  if (!hasRole(caller, LEAST_ROLE[action]))
    return problem(
      "NOT_ALLOWED",
      `To ${action} takes the role of ${LEAST_ROLE[action]}; yours is ${caller.role}. Ask an owner of the house.`,
    );
  if (caller.isHeld === true && LEAST_ROLE[action] !== "reader")
    return problem(
      "SECOND_STEP_NEEDED",
      `To ${action} takes a second step when you sign in: add a device on the page of your account. Until then you can read.`,
    );
  if (caller.via === "token" && BY_HAND.includes(action))
    return problem("NOT_ALLOWED", `A token cannot ${action}: sign in for it.`);
  if (!maySee(caller, about))
    return problem("NOT_ALLOWED", "This is not shown to you. Ask whoever made it to share it.");
  if (isOnesOwnOnly(action) && about.by !== undefined && about.by !== caller.id)
    return problem(
      "NOT_ALLOWED",
      `Only whoever made it may ${action}.${action === "say who sees an examination" ? "" : " Copy it, and go on with the copy."}`,
    );
  if (NOT_ON_ONES_OWN.includes(action) && about.isShared === true && about.by === caller.id)
    return problem(
      "NOT_ALLOWED",
      `Nobody decides on their own ${action === "end a dispute" ? "dispute" : "proposal"} in a shared house. Ask another reviewer.`,
    );
  return undefined;
}

/** What only somebody who signed in does, so that a token that was lost makes no other and shuts nobody out. */
const BY_HAND: readonly Action[] = [
  "manage one's own account",
  "ask for a token",
  "manage people",
  "read the audit",
  "sign a checkpoint",
];

/** Tells whether a thing is shown to a caller. */
export const maySee = (caller: Pick<Caller, "id">, { by, seenBy }: About): boolean =>
  seenBy === undefined || by === caller.id || seenBy.includes("house") || seenBy.includes(caller.id);

const hasRole = ({ role }: Caller, least: Role): boolean => ROLES.indexOf(role) >= ROLES.indexOf(least);

const isOnesOwnOnly = (action: Action): boolean =>
  action === "change a proposal" ||
  action === "take back a dispute" ||
  action === "say who sees an examination";

/** What takes somebody else in a shared house. */
const NOT_ON_ONES_OWN: readonly Action[] = ["decide on a proposal", "end a dispute"];
