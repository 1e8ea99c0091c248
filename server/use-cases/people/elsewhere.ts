import { ENTRY_CARD, entryOf, holdingEntry, isEndedSince } from "../../domain/people/entry.ts";
import { IDENTITY_CARD, identityOf, identityWrite } from "../../domain/people/identity.ts";
import { PERSON_CARD, personOf } from "../../domain/people/person.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import type { Identity, Way } from "../../ports/provider.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { type Confirming, confirmSelf } from "./confirm-self.ts";
import { openSession, type SignedIn } from "./open-session.ts";
import { isOwnAddress } from "./own-origin.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { sealBegun, unsealBegun } from "./sealed-way.ts";
import { houseSecret } from "./sign-in-card.ts";
import { writeAsSelf } from "./write-as-self.ts";

/** The page that the browser comes back to. */
const BACK = "/sign-in/elsewhere";
const PURPOSE = "elsewhere";

/** A way that was begun: to sign in, or to link what is found at its end to a person. */
type Begun = Way & { readonly person?: string };

export interface BegunElsewhere {
  /** Where the browser goes. */
  readonly address: string;
  /** What it keeps meanwhile, and gives back. */
  readonly way: string;
}

/** Begins the way to the other provider; with `confirming` to link what it says to one's own account. */
export async function beginElsewhere(
  ports: PeoplePorts,
  origin: string,
  confirming?: Confirming,
): Promise<BegunElsewhere | Refusal> {
  const { provider, secrets } = ports;
  if (provider === undefined) return { refused: [noProvider] };
  if (!isOwnAddress(origin, ports.origins ?? []))
    return { refused: [problem("WRONG_FORMAT", "This is no address of the house.", ["origin"])] };
  const self = confirming && (await confirmSelf(ports, confirming));
  if (isRefusal(self)) return self;
  const [state, nonce, verifier] = [secrets.newSecret(), secrets.newSecret(), secrets.newSecret()];
  const way: Begun = { redirect: origin + BACK, state, nonce, verifier };
  const address = await provider.begin(way);
  if (isProblem(address)) return { refused: [address] };
  if (self !== undefined && self.cards.length > 0) {
    const written = await ports.store.writeCards({ ...signed(ports, "begin to link"), cards: self.cards });
    if (isProblem(written)) return { refused: [written] };
  }
  return { address, way: await sealBegun(ports, PURPOSE, self ? { ...way, person: self.person } : way) };
}

/** Ends the way: signs in whoever the identity is linked to, or links it. */
export async function finishElsewhere(
  ports: PeoplePorts,
  { way, cameBackTo }: { readonly way: string; readonly cameBackTo: string },
): Promise<SignedIn | { readonly linked: true } | Refusal> {
  const { provider } = ports;
  if (provider === undefined) return { refused: [noProvider] };
  const begun = await unsealBegun<Begun>(ports, PURPOSE, way);
  if (begun === undefined) return { refused: [tooLate] };
  const identity = await provider.finish(begun.what, cameBackTo);
  if (isProblem(identity)) return { refused: [identity] };
  return begun.what.person === undefined
    ? signInAs(ports, identity, begun.begunAt)
    : link(ports, identity, begun.what.person, begun.begunAt);
}

async function signInAs(
  ports: PeoplePorts,
  identity: Identity,
  begunAt: string,
): Promise<SignedIn | Refusal> {
  const { store } = ports;
  const card = await store.card(IDENTITY_CARD, await idOf(ports, identity));
  const linked = card && identityOf(card);
  const entry = entryOf(linked && (await store.card(ENTRY_CARD, linked.person)));
  const kept = linked && (await store.card(PERSON_CARD, linked.person));
  const person = kept && personOf(kept);
  if (card === undefined || linked === undefined || person?.state !== "active") return { refused: [unknown] };
  if (begunAt <= linked.lastBegun || isEndedSince(entry, begunAt)) return { refused: [tooLate] };
  const cards = [identityWrite(card.id, card.version, { ...linked, lastBegun: begunAt })];
  const session = { person: person.id, ended: entry.ended, steps: identity.isStrong ? 2 : 1 } as const;
  return openSession(ports, session, { cards, did: "sign in elsewhere" });
}

async function link(
  ports: PeoplePorts,
  identity: Identity,
  person: string,
  begunAt: string,
): Promise<{ readonly linked: true } | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  if (ports.caller?.id !== person) return { refused: [tooLate] };
  const id = await idOf(ports, identity);
  if (await ports.store.card(IDENTITY_CARD, id))
    return {
      refused: [problem("NAME_TAKEN", "Somebody here signs in with this account of the other provider.")],
    };
  const { issuer } = identity;
  const card = identityWrite(id, 0, { person, issuer, linkedAt: ports.now(), lastBegun: begunAt });
  const { deed } = signed(ports, "link account elsewhere");
  const written = await writeAsSelf(ports, deed, ({ entry }) =>
    isEndedSince(entry, begunAt) ? { refused: [tooLate] } : [card, holdingEntry(person, entry)],
  );
  return isRefusal(written) ? written : { linked: true };
}

/** Ids of cards stand in the ledger for ever, so that a subject stands in none as it is. */
const idOf = async (ports: PeoplePorts, { issuer, subject }: Identity): Promise<string> =>
  ports.secrets.hash(JSON.stringify([await houseSecret(ports), issuer, subject]));

const noProvider = problem("WRONG_STATE", "This house has no other provider to sign in at.");
const tooLate = problem(
  "SIGN_IN_REFUSED",
  "This way was begun too long ago, elsewhere, or was used. Begin anew on the page to sign in.",
);
const unknown = problem(
  "SIGN_IN_REFUSED",
  "Nobody here is linked to this account. Sign in with your password first, and link it on the page of your account.",
);
