import { ROLES } from "../../domain/people/caller.ts";
import type { Person } from "../../domain/people/person.ts";
import type { Passkeys } from "../../ports/passkeys.ts";
import { acceptInvitation } from "../../use-cases/people/accept-invitation.ts";
import { beginAnew, erasePerson, takeNewPassword } from "../../use-cases/people/begin-anew.ts";
import {
  beginFactor,
  finishFactor,
  removeFactor,
  renewRecoveryCodes,
} from "../../use-cases/people/change-factor.ts";
import { changePerson } from "../../use-cases/people/change-person.ts";
import { beginElsewhere, finishElsewhere } from "../../use-cases/people/elsewhere.ts";
import type { Found } from "../../use-cases/people/find-caller.ts";
import { invite } from "../../use-cases/people/invite.ts";
import { listPeople, lookAtOwnAccount } from "../../use-cases/people/look-at-people.ts";
import { makeToken } from "../../use-cases/people/make-token.ts";
import type { SignedIn } from "../../use-cases/people/open-session.ts";
import { changePassword, endOwn } from "../../use-cases/people/own-account.ts";
import {
  beginPasskey,
  beginPasskeySignIn,
  finishPasskey,
  finishPasskeySignIn,
  removePasskey,
} from "../../use-cases/people/passkeys.ts";
import type { PeoplePorts } from "../../use-cases/people/people-ports.ts";
import { readAudit } from "../../use-cases/people/read-audit.ts";
import { signIn } from "../../use-cases/people/sign-in.ts";
import { isRefusal, type Refusal } from "../../use-cases/refusal.ts";
import type { Input } from "./read-input.ts";

/** Who asks, and from where. */
export interface Asking {
  readonly found: Found | undefined;
  readonly address?: string;
}
export type AccountPorts = PeoplePorts & { readonly passkeys: Passkeys };

/** What an action answers; `session` is what the browser keeps from now on, null that it forgets what it has. */
export interface Done {
  readonly body: object;
  readonly session?: string | null;
}
type Act = (ports: AccountPorts, input: Input, asking: Asking) => Promise<Done | undefined>;

const answer = async (body: Promise<object>): Promise<Done> => ({ body: await body });
const ended = async (body: Promise<object>): Promise<Done> => {
  const done = await body;
  return isRefusal(done) ? { body: done } : { body: done, session: null };
};
const signedIn = async (done: Promise<SignedIn | Refusal | { readonly linked: true }>): Promise<Done> => {
  const signed = await done;
  if (isRefusal(signed) || "linked" in signed) return { body: signed };
  return { body: { person: signed.person }, session: signed.secret };
};
/** Nothing is done where something is wrong with what was sent. */
const sound = (input: Input, act: () => Promise<Done>) =>
  input.problems.length > 0 ? Promise.resolve(undefined) : act();

/** What is said again before something that one signs in with is changed. */
const confirmingOf = (input: Input) => ({
  before: input.text("before"),
  ...(input.has("code") ? { code: input.text("code") } : {}),
});

/** What can be done without being signed in. */
export const OPEN_ACTIONS: readonly string[] = [
  ...["who", "sign-in", "accept-invitation", "take-new-password"],
  ...["begin-elsewhere", "finish-elsewhere", "begin-passkey-sign-in", "finish-passkey-sign-in"],
];

/** All that can be done with accounts, by the last word of the address. */
export const ACCOUNT_ACTIONS: Readonly<Record<string, Act>> = {
  who: async ({ provider }, __, { found }) => ({
    body: { accounts: true, caller: found?.caller ?? null, provider: provider?.name ?? null },
  }),
  "sign-in": (ports, input, { address }) => {
    const typed = {
      ...{ signInName: input.text("signInName"), password: input.text("password") },
      ...(input.has("code") ? { code: input.text("code") } : {}),
      ...(address === undefined ? {} : { address }),
    };
    return sound(input, () => signedIn(signIn(ports, typed)));
  },
  "accept-invitation": (ports, input) => {
    const accepted = {
      ...{ secret: input.text("secret"), signInName: input.text("signInName") },
      ...{ name: input.text("name"), password: input.text("password") },
    };
    return sound(input, () => signedIn(acceptInvitation(ports, accepted)));
  },
  "begin-elsewhere": (ports, input) => {
    const origin = input.text("origin");
    return sound(input, () => answer(beginElsewhere(ports, origin)));
  },
  "finish-elsewhere": (ports, input) => {
    const came = { way: input.text("way"), cameBackTo: input.text("cameBackTo") };
    return sound(input, () => signedIn(finishElsewhere(ports, came)));
  },
  "link-elsewhere": (ports, input) => {
    const [origin, confirming] = [input.text("origin"), confirmingOf(input)];
    return sound(input, () => answer(beginElsewhere(ports, origin, confirming)));
  },
  "unlink-elsewhere": (ports, input) => {
    const id = input.text("id");
    return sound(input, () => answer(endOwn(ports, "identity", id)));
  },
  "sign-out": (ports, _, { found }) => ended(endOwn(ports, "session", found?.session ?? "")),
  mine: (ports) => answer(lookAtOwnAccount(ports)),
  "change-password": (ports, input) => {
    const typed = { ...confirmingOf(input), password: input.text("password") };
    return sound(input, () => ended(changePassword(ports, typed)));
  },
  "begin-device": (ports, input) => {
    const confirming = confirmingOf(input);
    return sound(input, () => answer(beginFactor(ports, confirming)));
  },
  "finish-device": (ports, input) => {
    const code = input.text("code");
    return sound(input, () => answer(finishFactor(ports, code)));
  },
  "remove-device": (ports, input) => {
    const confirming = confirmingOf(input);
    return sound(input, () => answer(removeFactor(ports, confirming)));
  },
  "renew-recovery-codes": (ports, input) => {
    const confirming = confirmingOf(input);
    return sound(input, () => answer(renewRecoveryCodes(ports, confirming)));
  },
  "end-session": (ports, input) => {
    const id = input.text("id");
    return sound(input, () => answer(endOwn(ports, "session", id)));
  },
  "make-token": (ports, input) => {
    const asked = {
      label: input.text("label"),
      role: input.oneOf("role", ROLES),
      days: input.number("days"),
    };
    return sound(input, () => answer(makeToken(ports, asked)));
  },
  "take-back-token": (ports, input) => {
    const id = input.text("id");
    return sound(input, () => answer(endOwn(ports, "token", id)));
  },
  people: (ports) => answer(listPeople(ports)),
  invite: (ports, input) => {
    const role = input.oneOf("role", ROLES);
    return sound(input, () => answer(invite(ports, role)));
  },
  "change-person": (ports, input) => {
    const id = input.text("id");
    const version = input.number("expectedVersion");
    const change: Partial<Pick<Person, "role" | "state">> = {
      ...(input.has("role") ? { role: input.oneOf("role", ROLES) } : {}),
      ...(input.has("state") ? { state: input.oneOf("state", ["active", "shut out"]) } : {}),
    };
    return sound(input, () => answer(changePerson(ports, id, version, change)));
  },
  "begin-passkey": (ports, input) => {
    const [origin, confirming] = [input.text("origin"), confirmingOf(input)];
    return sound(input, () => answer(beginPasskey(ports, origin, confirming)));
  },
  "finish-passkey": (ports, input) => {
    const came = { way: input.text("way"), response: input.text("response"), label: input.text("label") };
    return sound(input, () => answer(finishPasskey(ports, came)));
  },
  "begin-passkey-sign-in": (ports, input) => {
    const origin = input.text("origin");
    return sound(input, () => answer(beginPasskeySignIn(ports, origin)));
  },
  "finish-passkey-sign-in": (ports, input) => {
    const came = { way: input.text("way"), response: input.text("response") };
    return sound(input, () => signedIn(finishPasskeySignIn(ports, came)));
  },
  "remove-passkey": (ports, input) => {
    const [id, confirming] = [input.text("id"), confirmingOf(input)];
    return sound(input, () => answer(removePasskey(ports, id, confirming)));
  },
  "begin-anew": (ports, input) => {
    const id = input.text("id");
    return sound(input, () => answer(beginAnew(ports, id)));
  },
  "take-new-password": (ports, input) => {
    const typed = { secret: input.text("secret"), password: input.text("password") };
    return sound(input, () => signedIn(takeNewPassword(ports, typed)));
  },
  "erase-person": (ports, input) => {
    const id = input.text("id");
    const version = input.number("expectedVersion");
    return sound(input, () => answer(erasePerson(ports, id, version)));
  },
  audit: (ports, input) => {
    const before = input.has("before") ? input.number("before") : undefined;
    return sound(input, () => answer(readAudit(ports, before)));
  },
};
