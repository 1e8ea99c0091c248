import type { Card, CardWrite } from "../card.ts";

/** Codes that one signs in with where the device is lost: each once. Kept as hashes; the card's id is the person's. */
export interface RecoveryCodes {
  readonly hashes: readonly string[];
}
/** How many are made at once. */
export const RECOVERY_CODES = 10;

/** A code as it was made, of what somebody typed: in lower case, without blanks and hyphens; undefined if it cannot be one. */
export function readRecoveryCode(typed: string): string | undefined {
  const code = typed.toLowerCase().replaceAll(/[\s-]/g, "");
  return /^[a-z2-7]{24}$/.test(code) ? code : undefined;
}

/** In groups of four, as it is shown. */
export const printRecoveryCode = (code: string): string => code.replaceAll(/(.{4})(?=.)/g, "$1-");

export const recoveryCodesOf = ({ body }: Card): RecoveryCodes => body as RecoveryCodes;
export const recoveryCodesPlace = (person: string) => ({ kind: "recovery-codes", id: person }) as const;
export const recoveryCodesWrite = (
  person: string,
  expectedVersion: number,
  codes: RecoveryCodes,
): CardWrite => ({
  ...recoveryCodesPlace(person),
  ...{ expectedVersion, next: { keys: {}, body: codes } },
});
