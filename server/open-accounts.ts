import { answerAccount } from "./api/account/answer-account.ts";
import { type Caller, LOCAL_CALLER } from "./domain/people/caller.ts";
import type { Shown } from "./http/credentials.ts";
import { openPasskeys } from "./passkeys/open-passkeys.ts";
import { everySo } from "./ports/every-so.ts";
import type { Log } from "./ports/log.ts";
import type { Store } from "./ports/store.ts";
import { countTries } from "./secrets/count-tries.ts";
import { openSecrets } from "./secrets/open-secrets.ts";
import { type Found, findCaller } from "./use-cases/people/find-caller.ts";
import { inviteFirstOwner } from "./use-cases/people/invite.ts";
import { type NoteRefused, openNoteRefused } from "./use-cases/people/note-refused.ts";
import { openSweep } from "./use-cases/people/open-sweep.ts";
import type { PeoplePorts } from "./use-cases/people/people-ports.ts";
import { isRefusal } from "./use-cases/refusal.ts";

type Answer = ReturnType<typeof answerAccount>;

/** Who sends a request, and what there is to do with accounts. */
export interface Accounts {
  readonly callerOf: (shown: Shown) => Promise<Caller | undefined>;
  readonly find: (shown: Shown) => Promise<Found | undefined>;
  /** Who that is at this moment, without that it counts as a request. */
  readonly lookUp: (shown: Shown) => Promise<Found | undefined>;
  readonly answer: (
    action: string,
    value: unknown,
    from: { readonly shown: Shown; readonly address: string | undefined },
  ) => Answer;
  /** Notes in the ledger that something was refused. */
  readonly noteRefused: NoteRefused;
  /** Tells in the log, where there is no owner yet, the secret that the first comes in by; sweeps from now on what has ended. */
  readonly begin: (log: Log) => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Milliseconds between two turns of sweeping. */
const SWEEP_EVERY = 60_000;

/** On a machine of one's own: whoever reaches it is its owner. */
const NO_ACCOUNTS: Accounts = {
  callerOf: async () => LOCAL_CALLER,
  find: async () => ({ caller: LOCAL_CALLER }),
  lookUp: async () => ({ caller: LOCAL_CALLER }),
  answer: async (action) =>
    action === "who" ? { status: 200, body: { accounts: false, caller: LOCAL_CALLER } } : undefined,
  noteRefused: async () => {},
  begin: async () => {},
  stop: async () => {},
};

/** Accounts kept in a store, if they are on. */
export function openAccounts(
  isOn: boolean,
  {
    inTime,
    ...plain
  }: Pick<PeoplePorts, "store" | "now" | "newSuffix" | "secondStepFrom" | "provider" | "origins"> & {
    /** A store that is given up at the deadline of one request, counted from now. */
    readonly inTime: (store: Store) => Store;
  },
): Accounts {
  if (!isOn) return NO_ACCOUNTS;
  const ports = { ...plain, secrets: openSecrets(), tries: countTries(), passkeys: openPasskeys() };
  const forRequest = () => ({ ...ports, store: inTime(ports.store) });
  const noteRefused = openNoteRefused({
    now: ports.now,
    store: { writeCards: (along) => inTime(ports.store).writeCards(along) },
  });
  let sweeping: ReturnType<typeof everySo> | undefined;
  const find = async (shown: Shown, asked = forRequest()) => {
    const found = await findCaller(asked, shown);
    if (found === undefined && shown.token !== undefined) await noteRefused("refuse token");
    if (found === undefined && shown.session !== undefined) await noteRefused("refuse session");
    return found;
  };
  return {
    noteRefused,
    callerOf: async (shown) => (await find(shown))?.caller,
    find: (shown) => find(shown),
    lookUp: (shown) => findCaller(forRequest(), shown, "looked"),
    answer: async (action, value, { shown, address }) => {
      const asked = forRequest();
      const found = await find(shown, asked);
      const asking = { found, ...(address === undefined ? {} : { address }) };
      const whose = {
        caller: found?.caller,
        ...(found?.session === undefined ? {} : { here: found.session }),
      };
      const answered = await answerAccount({ ...asked, ...whose }, action, value, asking);
      if (answered?.isRefusedByPolicy) await noteRefused(`refuse to ${action}`, found?.caller.id);
      return answered;
    },
    stop: () => sweeping?.stop() ?? Promise.resolve(),
    begin: async (log) => {
      sweeping = everySo(SWEEP_EVERY, openSweep(ports), (failure) =>
        log({ level: "error", event: "could not sweep", error: String(failure) }),
      );
      const invited = await inviteFirstOwner(ports);
      if (invited === undefined) return;
      if (isRefusal(invited))
        return log({ level: "error", event: "no first owner", why: invited.refused[0].message });
      log({
        ...{ level: "info", event: "first owner", secret: invited.secret, until: invited.until },
        message:
          "There is no owner yet. Open /set-up, give this secret, and choose name and password. It serves once.",
      });
    },
  };
}
