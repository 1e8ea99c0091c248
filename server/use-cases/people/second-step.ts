import type { CardWrite } from "../../domain/card.ts";
import { factorOf, factorPlace, factorWrite, stepsAround } from "../../domain/people/factor.ts";
import {
  readRecoveryCode,
  recoveryCodesOf,
  recoveryCodesPlace,
  recoveryCodesWrite,
} from "../../domain/people/recovery-codes.ts";
import { type Problem, problem } from "../../domain/problem.ts";
import type { PeoplePorts } from "./people-ports.ts";

type Ports = Pick<PeoplePorts, "store" | "secrets" | "now">;

/** What a second step came to: the writes that use its code up, and how many steps it makes with the password. */
export interface SecondStep {
  readonly cards: readonly CardWrite[];
  readonly steps: 1 | 2;
}

export const codeRefused = problem(
  "SIGN_IN_REFUSED",
  "This code does not fit, or was used. Wait for the next one, or take a recovery code.",
  ["code"],
);

/**
 * Checks what somebody with a device types after the password: its code of now, which serves once, or a recovery code. Who has no
 * device needs none. `SECOND_STEP_NEEDED` where nothing was typed, `SIGN_IN_REFUSED` where it is wrong.
 */
export async function checkSecondStep(
  ports: Ports,
  person: string,
  typed: string | undefined,
): Promise<SecondStep | Problem> {
  const { store, secrets, now } = ports;
  const card = await store.card(factorPlace(person).kind, person);
  const factor = card && factorOf(card);
  if (factor?.state !== "on") return { cards: [], steps: 1 };
  if (typed === undefined || typed.trim() === "")
    return problem(
      "SECOND_STEP_NEEDED",
      "Type the code that your device shows for this house, or one of your recovery codes.",
      ["code"],
    );
  const recovery = readRecoveryCode(typed);
  if (recovery !== undefined) return spendRecoveryCode(ports, person, recovery);
  const steps = stepsAround(now()).filter((step) => step > factor.lastStep);
  const step = secrets.findStep(factor.secret, typed.replaceAll(/\s/g, ""), steps);
  if (step === undefined) return codeRefused;
  return { cards: [factorWrite(person, card?.version ?? 0, { ...factor, lastStep: step })], steps: 2 };
}

async function spendRecoveryCode(
  { store, secrets }: Ports,
  person: string,
  code: string,
): Promise<SecondStep | Problem> {
  const card = await store.card(recoveryCodesPlace(person).kind, person);
  const hash = secrets.hash(code);
  const kept = card ? recoveryCodesOf(card).hashes : [];
  if (!kept.includes(hash)) return codeRefused;
  const hashes = kept.filter((one) => one !== hash);
  return { cards: [recoveryCodesWrite(person, card?.version ?? 0, { hashes })], steps: 2 };
}
