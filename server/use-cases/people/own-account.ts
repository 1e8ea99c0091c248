import { endingEntry } from "../../domain/people/entry.ts";
import { IDENTITY_CARD } from "../../domain/people/identity.ts";
import { judgePassword } from "../../domain/people/judge-password.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { SESSION_CARD } from "../../domain/people/session.ts";
import { TOKEN_CARD } from "../../domain/people/token.ts";
import { problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { type Confirming, confirmSelf } from "./confirm-self.ts";
import { tryLater } from "./note-failure.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { nameOf, passwordWrite } from "./sign-in-card.ts";
import { writeAnew } from "./write-anew.ts";
import { writeAsSelf } from "./write-as-self.ts";

/** Takes a new password; the one before has to be said, and the code of a device. All sessions of the person end, this one too. */
export async function changePassword(
  ports: PeoplePorts,
  { password, ...confirming }: Confirming & { readonly password: string },
): Promise<{ readonly changed: true } | Refusal> {
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  const { secrets, store } = ports;
  const id = self.person;
  const card = await store.card(PERSON_CARD, id);
  const names = [await nameOf(ports, id), (card && personOf(card))?.name ?? ""].filter((name) => name !== "");
  const weak = judgePassword(password, names, secrets.isCommonPassword);
  if (weak) return { refused: [weak] };
  const phc = await secrets.hashPassword(password);
  if (phc === "busy") return { refused: [tryLater(5)] };
  const { deed } = signed(ports, "change password", id);
  const written = await writeAsSelf(ports, deed, ({ entry }) => [
    passwordWrite(id, self.passwordVersion, phc),
    ...self.cards,
    endingEntry(id, entry, ports.now()),
  ]);
  return isRefusal(written) ? written : { changed: true };
}

/** What of one's own one ends by itself, as the ledger tells it. */
const ENDED = {
  [SESSION_CARD]: "end session",
  [TOKEN_CARD]: "take back token",
  [IDENTITY_CARD]: "unlink account elsewhere",
} as const;

/** Ends one session, takes back one token or unlinks one account elsewhere, of one's own. */
export async function endOwn(
  ports: PeoplePorts,
  kind: keyof typeof ENDED,
  id: string,
): Promise<{ readonly ended: true } | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const { deed } = signed(ports, ENDED[kind]);
  const written = await writeAnew(ports.store, deed, [kind], async () => {
    const card = await ports.store.card(kind, id);
    const whose = (card?.body as { readonly person?: string } | undefined)?.person;
    // Somebody else's is answered as if it were not there.
    if (card === undefined || whose !== ports.caller?.id)
      return {
        refused: [problem("UNKNOWN_SESSION", `You have no such ${kind}; it may have ended already.`)],
      };
    return [{ kind, id, expectedVersion: card.version }];
  });
  return isRefusal(written) ? written : { ended: true };
}
