import { ROLES, type Role } from "../../domain/people/caller.ts";
import { holdingEntry } from "../../domain/people/entry.ts";
import { readShownName } from "../../domain/people/sign-in-name.ts";
import { LONGEST_TOKEN, TOKEN_CARD, tokenWrite } from "../../domain/people/token.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import type { Invited } from "./invite.ts";
import { later, type PeoplePorts } from "./people-ports.ts";
import { writeAsSelf } from "./write-as-self.ts";

/** Tokens of one person at once. */
export const MOST_TOKENS = 50;

/** Makes a token for a script of one's own: for a role up to one's own, for 1 to 365 days, shown this once. */
export async function makeToken(
  ports: PeoplePorts,
  { label, role, days }: { readonly label: string; readonly role: Role; readonly days: number },
): Promise<Invited | Refusal> {
  const refusal = refuseCaller(ports, "ask for a token");
  if (refusal) return refusal;
  const { caller, secrets, store } = ports;
  const read = readShownName(label);
  if (isProblem(read)) return { refused: [{ ...read, path: ["label"] }] };
  if (caller === undefined || ROLES.indexOf(role) > ROLES.indexOf(caller.role))
    return { refused: [problem("NOT_ALLOWED", "A token may do no more than you.", ["role"])] };
  if (!Number.isInteger(days) || days < 1 || days > LONGEST_TOKEN)
    return { refused: [problem("WRONG_FORMAT", `A token holds for 1 to ${LONGEST_TOKEN} days.`, ["days"])] };
  const own = { kind: TOKEN_CARD, key: { name: "person", value: caller.id } };
  const { deed } = signed(ports, "make token");
  const { at } = deed;
  const secret = `scribeline_${secrets.newSecret()}`;
  const until = later(at, days * 24 * 3_600_000);
  const token = { person: caller.id, role, label: read, madeAt: at, until };
  const written = await writeAsSelf(ports, deed, async ({ person, entry }) =>
    (await store.listCards(own, { first: 1 })).total < MOST_TOKENS
      ? [tokenWrite(secrets.hash(secret), token), holdingEntry(person, entry)]
      : tooMany,
  );
  return isRefusal(written) ? written : { secret, until };
}

const tooMany: Refusal = {
  refused: [problem("TRY_LATER", `You have ${MOST_TOKENS} tokens. Take back those that serve no more.`)],
};
