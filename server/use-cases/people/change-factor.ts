import type { CardWrite } from "../../domain/card.ts";
import { holdingEntry } from "../../domain/people/entry.ts";
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
import { problem } from "../../domain/problem.ts";
import { refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { type Confirming, confirmSelf } from "./confirm-self.ts";
import { noteFailure, troubleOf, tryLater } from "./note-failure.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { codeRefused } from "./second-step.ts";
import { nameOf } from "./sign-in-card.ts";
import { endOthers, writeAsSelf } from "./write-as-self.ts";

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
  const { deed } = signed(ports, "begin second step");
  const written = await writeAsSelf(ports, deed, ({ entry }) => [begun, holdingEntry(self.person, entry)]);
  if (isRefusal(written)) return written;
  return { secret, address: factorAddress(secret, await nameOf(ports, self.person), "Scribeline") };
}

/**
 * Takes a device's first code: from now on it is asked for. All other sessions end; the one that asks counts as two steps. Wrong codes
 * count like those of signing in.
 */
export async function finishFactor(ports: PeoplePorts, code: string): Promise<NewCodes | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const person = ports.caller?.id ?? "";
  const begun = await ports.tries.inLine(person, () => checkFirstCode(ports, person, code));
  if (begun === "busy") return { refused: [tryLater(5)] };
  if (isRefusal(begun)) return begun;
  const fresh = await freshCodes(ports, person);
  const { deed } = signed(ports, "add second step");
  const written = await writeAsSelf(ports, deed, (self) => [
    begun,
    fresh.card,
    ...endOthers(self, ports.now(), 2),
  ]);
  return isRefusal(written) ? written : { codes: fresh.codes };
}

/** The card of a device that is on from now on, if this is its code. */
async function checkFirstCode(
  ports: PeoplePorts,
  person: string,
  code: string,
): Promise<CardWrite | Refusal> {
  const { store, secrets } = ports;
  const { wait } = await troubleOf(ports, person);
  if (wait > 0) return { refused: [tryLater(wait)] };
  const card = await store.card(factorPlace(person).kind, person);
  const factor = card && factorOf(card);
  if (card === undefined || factor?.state !== "begun")
    return { refused: [problem("WRONG_STATE", "No device is being set up. Begin anew.")] };
  const lastStep = secrets.findStep(factor.secret, code.replaceAll(/\s/g, ""), stepsAround(ports.now()));
  if (lastStep !== undefined) return factorWrite(person, card.version, { ...factor, state: "on", lastStep });
  await noteFailure(ports, person, "refuse first code of a device");
  return { refused: [codeRefused] };
}

/** Takes the device and its recovery codes away. All other sessions end. */
export async function removeFactor(
  ports: PeoplePorts,
  confirming: Confirming,
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
  const { deed } = signed(ports, "remove second step");
  const written = await writeAsSelf(ports, deed, (asking) => [...gone, ...endOthers(asking, ports.now())]);
  return isRefusal(written) ? written : { removed: true };
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
  const { deed } = signed(ports, "renew recovery codes");
  const written = await writeAsSelf(ports, deed, ({ person, entry }) => [
    ...[...used, card, holdingEntry(person, entry)],
  ]);
  return isRefusal(written) ? written : { codes };
}

async function freshCodes({ store, secrets }: PeoplePorts, person: string) {
  const codes = Array.from({ length: RECOVERY_CODES }, () => secrets.newRecoveryCode());
  const before = await store.card(recoveryCodesPlace(person).kind, person);
  const card = recoveryCodesWrite(person, before?.version ?? 0, { hashes: codes.map(secrets.hash) });
  return { codes: codes.map(printRecoveryCode), card };
}
