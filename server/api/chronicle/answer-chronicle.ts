import { mayDo } from "../../domain/people/may-do.ts";
import type { Problem } from "../../domain/problem.ts";
import { isRefusal } from "../../use-cases/refusal.ts";
import { readInput } from "../account/read-input.ts";
import { createLoaders } from "../loaders.ts";
import { CHRONICLE_ACTIONS, type ChroniclePorts, type ReadingPorts } from "./chronicle-actions.ts";

export interface ChronicleAnswer {
  readonly status: number;
  readonly body: object;
  /** Seconds after which it may be asked for again. */
  readonly retryAfter?: number;
}

const STATUS: Readonly<Record<string, number>> = {
  NOT_SIGNED_IN: 401,
  NOT_ALLOWED: 403,
  CHANGED_MEANWHILE: 409,
  STORE_UNREACHABLE: 503,
  STORE_LOCKED: 503,
};

/** Answers what an address below `/chronicle/` names; undefined if there is no such thing. */
export async function answerChronicle(
  ports: ChroniclePorts,
  action: string,
  value: unknown,
): Promise<ChronicleAnswer | undefined> {
  const act = Object.hasOwn(CHRONICLE_ACTIONS, action) ? CHRONICLE_ACTIONS[action] : undefined;
  if (act === undefined) return undefined;
  const refusal = mayDo(ports.caller, "read the graph");
  if (refusal) return refused([refusal]);
  const input = readInput(value);
  const doIt = act(input);
  if (input.problems.length > 0) return refused(input.problems);
  const done = await doIt(withNames(ports));
  return isRefusal(done) ? refused(done.refused) : { status: 200, body: done };
}

/** With what is named read in few calls of the store; for one request. */
export function withNames(ports: ChroniclePorts): ReadingPorts {
  const { terms, sources } = createLoaders(ports.store);
  return { ...ports, named: { terms: terms.many, sources: sources.many } };
}

/** A refusal as it is answered. */
export const refused = (problems: readonly Problem[]): ChronicleAnswer => ({
  status: STATUS[problems[0]?.code ?? ""] ?? 400,
  body: { refused: problems },
});
