import { isProblem, problem } from "../../domain/problem.ts";
import { refuseCaller } from "../acting.ts";
import type { Refusal } from "../refusal.ts";
import { noteFailure, troubleOf, tryLater } from "./note-failure.ts";
import type { PeoplePorts } from "./people-ports.ts";
import { checkSecondStep, type SecondStep } from "./second-step.ts";
import { passwordOf } from "./sign-in-card.ts";

/** What one says again before what one signs in with is changed. */
export interface Confirming {
  readonly before: string;
  readonly code?: string;
}

/** What it came to, with the version of the password that was said. */
export type Confirmed = SecondStep & { readonly person: string; readonly passwordVersion: number };

/**
 * Makes sure that whoever uses a session is the one it belongs to: the password again, and the code where there is a device. Failures
 * count like those of signing in, so that nobody tries passwords through a session that was left open.
 */
export async function confirmSelf(
  ports: PeoplePorts,
  { before, code }: Confirming,
): Promise<Confirmed | Refusal> {
  const refusal = refuseCaller(ports, "manage one's own account");
  if (refusal) return refusal;
  const person = ports.caller?.id ?? "";
  const { wait } = await troubleOf(ports, person);
  if (wait > 0) return { refused: [tryLater(wait)] };
  const kept = await passwordOf(ports, person);
  const checked = await ports.secrets.checkPassword(before, kept.phc);
  if (checked === "busy") return { refused: [tryLater(5)] };
  const answer = await ports.tries.inLine(person, async (): Promise<Confirmed | Refusal> => {
    // Others may have failed while this one was compared.
    const { wait: longer } = await troubleOf(ports, person);
    if (longer > 0) return { refused: [tryLater(longer)] };
    const second = checked.isRight
      ? await checkSecondStep(ports, person, code)
      : problem("SIGN_IN_REFUSED", "That is not the password you have now.", ["before"]);
    if (!isProblem(second)) return { ...second, person, passwordVersion: kept.version };
    if (second.code === "SIGN_IN_REFUSED") await noteFailure(ports, person, "refuse to confirm");
    return { refused: [second] };
  });
  return answer === "busy" ? { refused: [tryLater(5)] } : answer;
}
