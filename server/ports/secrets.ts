/** Makes and compares what only one person knows. Nothing of it is ever kept as it is. */
export interface Secrets {
  /** 256 random bits as 43 letters, digits, - and _. */
  readonly newSecret: () => string;
  /** SHA-256, hex: for what has so many random bits that nobody can guess it. */
  readonly hash: (secret: string) => string;
  /** A slow hash of a password, with what it was made by, as one text. */
  readonly hashPassword: (password: string) => Promise<string | "busy">;
  /**
   * Compares a password with a hash, or with nothing in the same time where there is no such person. `isOld`: the hash was made by
   * less than is asked for today.
   */
  readonly checkPassword: (
    password: string,
    kept: string | undefined,
  ) => Promise<{ readonly isRight: boolean; readonly isOld: boolean } | "busy">;
  readonly isCommonPassword: (text: string) => boolean;
  /** What only who knows the key can read or make; it can be handed out and taken back. */
  readonly seal: (text: string, key: string) => string;
  /** What was sealed with the key; undefined for anything else. */
  readonly unseal: (sealed: string, key: string) => string | undefined;
  /** 160 random bits in base32, for a device that shows codes. */
  readonly newFactorSecret: () => string;
  /** Which of the steps a code of such a device belongs to. */
  readonly findStep: (secret: string, code: string, steps: readonly number[]) => number | undefined;
  /** 120 random bits as 24 letters and digits that nobody takes for others. */
  readonly newRecoveryCode: () => string;
}
