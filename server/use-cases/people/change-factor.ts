import {
  factorAddress,
  factorOf,
  factorPlace,
  factorWrite,
  stepsAround,
} from "../../domain/people/factor.ts";
import {
  printRecoveryCode,
  RECOVERY_CODES,
  recoveryCodesPlace,
  recoveryCodesWrite,
} from "../../domain/people/recovery-codes.ts";
import { SESSION_CARD, sessionOf, sessionWrite } from "../../domain/people/session.ts";
import { isProblem, problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { type Confirming, confirmSelf } from "./confirm-self.ts";
import { endAllOf, type PeoplePorts } from "./people-ports.ts";
import { codeRefused } from "./second-step.ts";
import { nameOf } from "./sign-in-card.ts";

/** Shown once; only their hashes are kept. */
export interface NewCodes {
  readonly codes: readonly string[];
}

/** Makes the secret of a device. It counts only once the device gave a right code. */
export async function beginFactor(
  ports: PeoplePorts,
  confirming: Confirming,
): Promise<{ readonly secret: string; readonly address: string } | Refusal> {
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  const { store, secrets } = ports;
  const card = await store.card(factorPlace(self.person).kind, self.person);
  if (card && factorOf(card).state === "on")
    return { refused: [problem("WRONG_STATE", "There is a device already. Take it away first.")] };
  const secret = secrets.newFactorSecret();
  const begun = factorWrite(self.person, card?.version ?? 0, { secret, state: "begun", lastStep: 0 });
  const written = await store.writeCards({ ...signed(ports, "begin second step"), cards: [begun] });
  if (isProblem(written)) return { refused: [written] };
  return { secret, address: factorAddress(secret, await nameOf(ports, self.person), "Scribeline") };
}

/** Takes a device's first code: from now on it is asked for. All other sessions end; the one that asks, `here`, counts as two steps. */
export async function finishFactor(
  ports: PeoplePorts,
  code: string,
  here: string | undefined,
): Promise<NewCodes | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const { store, secrets } = ports;
  const person = ports.caller?.id ?? "";
  const card = await store.card(factorPlace(person).kind, person);
  const factor = card && factorOf(card);
  if (card === undefined || factor?.state !== "begun")
    return { refused: [problem("WRONG_STATE", "No device is being set up. Begin anew.")] };
  const lastStep = secrets.findStep(factor.secret, code.replaceAll(/\s/g, ""), stepsAround(ports.now()));
  if (lastStep === undefined) return { refused: [codeRefused] };
  const fresh = await freshCodes(ports, person);
  const session = here === undefined ? undefined : await store.card(SESSION_CARD, here);
  const cards = [
    factorWrite(person, card.version, { ...factor, state: "on", lastStep }),
    fresh.card,
    ...(await endAllOf(ports, person, { tokens: false, ...(here === undefined ? {} : { but: here }) })),
    ...(session ? [sessionWrite(session.id, session.version, { ...sessionOf(session), steps: 2 })] : []),
  ];
  const written = await store.writeCards({ ...signed(ports, "add second step"), cards });
  return isProblem(written) ? { refused: [written] } : { codes: fresh.codes };
}

/** Takes the device and its recovery codes away. All other sessions end. */
export async function removeFactor(
  ports: PeoplePorts,
  confirming: Confirming,
  here: string | undefined,
): Promise<{ readonly removed: true } | Refusal> {
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  const { store } = ports;
  const places = [factorPlace(self.person), recoveryCodesPlace(self.person)];
  const kept = await Promise.all(places.map(({ kind, id }) => store.card(kind, id)));
  const gone = kept.flatMap((card) =>
    card ? [{ kind: card.kind, id: card.id, expectedVersion: card.version }] : [],
  );
  if (gone.length === 0) return { refused: [problem("WRONG_STATE", "There is no device to take away.")] };
  const others = await endAllOf(ports, self.person, {
    ...{ tokens: false, ...(here === undefined ? {} : { but: here }) },
  });
  const written = await store.writeCards({
    ...{ ...signed(ports, "remove second step"), cards: [...gone, ...others] },
  });
  return isProblem(written) ? { refused: [written] } : { removed: true };
}

/** Makes new recovery codes; those before hold no more. */
export async function renewRecoveryCodes(
  ports: PeoplePorts,
  confirming: Confirming,
): Promise<NewCodes | Refusal> {
  const self = await confirmSelf(ports, confirming);
  if (isRefusal(self)) return self;
  if (self.steps === 1)
    return { refused: [problem("WRONG_STATE", "Recovery codes stand in for a device. Add one first.")] };
  const { codes, card } = await freshCodes(ports, self.person);
  const used = self.cards.filter(({ kind }) => kind !== card.kind);
  const written = await ports.store.writeCards({
    ...{ ...signed(ports, "renew recovery codes"), cards: [...used, card] },
  });
  return isProblem(written) ? { refused: [written] } : { codes };
}

async function freshCodes({ store, secrets }: PeoplePorts, person: string) {
  const codes = Array.from({ length: RECOVERY_CODES }, () => secrets.newRecoveryCode());
  const before = await store.card(recoveryCodesPlace(person).kind, person);
  const card = recoveryCodesWrite(person, before?.version ?? 0, { hashes: codes.map(secrets.hash) });
  return { codes: codes.map(printRecoveryCode), card };
}
