import { problem } from "../../domain/problem.ts";
import { isRefusal } from "../../use-cases/refusal.ts";
import { ACCOUNT_ACTIONS, type AccountPorts, type Asking, OPEN_ACTIONS } from "./account-actions.ts";
import { readInput } from "./read-input.ts";

export interface AccountAnswer {
  readonly status: number;
  readonly body: object;
  /** What the browser keeps from now on; null that it forgets what it has. */
  readonly session?: string | null;
  /** The caller may not do it, whatever was sent. */
  readonly isRefusedByPolicy?: true;
}

const STATUS: Readonly<Record<string, number>> = {
  NOT_SIGNED_IN: 401,
  SIGN_IN_REFUSED: 403,
  SECOND_STEP_NEEDED: 403,
  NOT_ALLOWED: 403,
  TRY_LATER: 429,
  CHANGED_MEANWHILE: 409,
  LAST_OWNER: 409,
};

/** Does what an address below `/account/` names; undefined if there is no such thing. */
export async function answerAccount(
  ports: AccountPorts,
  action: string,
  value: unknown,
  asking: Asking,
): Promise<AccountAnswer | undefined> {
  const act = Object.hasOwn(ACCOUNT_ACTIONS, action) ? ACCOUNT_ACTIONS[action] : undefined;
  if (act === undefined) return undefined;
  if (asking.found === undefined && !OPEN_ACTIONS.includes(action))
    return refused([problem("NOT_SIGNED_IN", "Sign in first.")]);
  const input = readInput(value);
  const done = await act(ports, input, asking);
  if (done === undefined) return refused(input.problems);
  if (isRefusal(done.body)) {
    const { refused: problems } = done.body;
    const isNoted = problems.some(({ code }) => code === "NOT_ALLOWED" || code === "SECOND_STEP_NEEDED");
    return { ...refused(problems), ...(isNoted ? { isRefusedByPolicy: true } : {}) };
  }
  return { status: 200, ...done };
}

const refused = (problems: readonly { readonly code: string }[]): AccountAnswer => ({
  status: STATUS[problems[0]?.code ?? ""] ?? 400,
  body: { refused: problems },
});
