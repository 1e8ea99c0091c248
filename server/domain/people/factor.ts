import type { Card, CardWrite } from "../card.ts";

/** The device that somebody signs in with besides the password, as RFC 6238 describes it. Its card's id is the person's. */
export interface Factor {
  /** 160 random bits in base32, which the device has as well: codes are made of it, so that no hash would do. */
  readonly secret: string;
  /** It counts only after it gave a right code once. */
  readonly state: "begun" | "on";
  /** The step of the newest code that was taken; none of that step or before is taken again. */
  readonly lastStep: number;
}
const FACTOR_CARD = "factor";

/** Seconds for which a code is shown. */
const STEP = 30;

/** The steps whose codes are taken at a time: one before and one behind, for clocks that are a little off. */
export function stepsAround(now: string): readonly number[] {
  const step = Math.floor(Date.parse(now) / 1000 / STEP);
  return [step - 1, step, step + 1];
}

/** What a device reads from a picture (the form that such devices share), or takes typed. */
export function factorAddress(secret: string, signInName: string, house: string): string {
  const label = `${encodeURIComponent(house)}:${encodeURIComponent(signInName)}`;
  return `otpauth://totp/${label}?secret=${secret}&issuer=${encodeURIComponent(house)}&algorithm=SHA1&digits=6&period=${STEP}`;
}

export const factorOf = ({ body }: Card): Factor => body as Factor;
export const factorPlace = (person: string) => ({ kind: FACTOR_CARD, id: person }) as const;
export const factorWrite = (person: string, expectedVersion: number, factor: Factor): CardWrite => ({
  ...factorPlace(person),
  ...{ expectedVersion, next: { keys: {}, body: factor } },
});
