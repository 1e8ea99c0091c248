import { countTries } from "#server/secrets/count-tries.ts";
import { openSecrets } from "#server/secrets/open-secrets.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { acceptInvitation } from "#server/use-cases/people/accept-invitation.ts";
import { findCaller } from "#server/use-cases/people/find-caller.ts";
import { inviteFirstOwner } from "#server/use-cases/people/invite.ts";
import type { PeoplePorts } from "#server/use-cases/people/people-ports.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";

export const DESK_PASSWORD = "four oak boards, one saw";

/** Accounts without HTTP, by a clock of one's own: hashes that are quick, and secrets in a row. */
export function openDesk() {
  const clock = { time: Date.UTC(2026, 0, 1) };
  let made = 0;
  const asked: string[] = [];
  const store = openMemoryStore();
  /** What happens while a password is compared, once. */
  const meanwhile: { comparing?: () => Promise<unknown> } = {};
  const ports = {
    store,
    now: () => new Date(clock.time).toISOString(),
    newSuffix: () => `s${++made}`,
    caller: undefined,
    tries: { ...countTries(), isToBeNoted: () => true, settle: async () => {} },
    secrets: {
      ...openSecrets(),
      newSecret: () => `secret-${++made}`,
      hash: (secret: string) => `hash-of-${secret.replaceAll(/[^a-z0-9-]/g, "")}`,
      hashPassword: async (password: string) => `new:${password}`,
      checkPassword: async (password: string, kept: string | undefined) => {
        asked.push(kept ?? "nobody");
        const isRight = kept?.split(":")[1] === password;
        const { comparing } = meanwhile;
        delete meanwhile.comparing;
        await comparing?.();
        return { isRight, isOld: kept?.startsWith("old:") ?? false };
      },
      isCommonPassword: () => false,
    },
  };
  return {
    ...{ clock, ports, asked, meanwhile, store },
    /** The first owner, signed in. */
    begin: async (): Promise<{ readonly person: string; readonly secret: string }> => {
      const { secret } = got(await inviteFirstOwner(ports));
      const accepted = { secret, signInName: "ada", name: "Ada", password: DESK_PASSWORD };
      return got(await acceptInvitation(ports, accepted));
    },
    /** As whoever has a session asks, with the id of that. */
    as: async (session: string): Promise<PeoplePorts & { readonly here: string }> => {
      const found = got(await findCaller(ports, { session }));
      return { ...ports, caller: found.caller, here: found.session ?? "" };
    },
  };
}

/** An answer that is no refusal. */
export const got = <Answer>(answer: Answer): Exclude<Answer, { refused: unknown } | undefined> => {
  if (isRefusal(answer) || answer === undefined) throw new Error(JSON.stringify(answer));
  return answer as Exclude<Answer, { refused: unknown } | undefined>;
};
