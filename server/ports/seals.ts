import type { HouseKey, Seal } from "../domain/proof/seal.ts";

/** A house as others know it. */
export interface House {
  readonly house: string;
  readonly keys: readonly HouseKey[];
}

/** Signs for this house, and tells whether a house signed. */
export interface Seals {
  /** This house; its first key is made when it is first asked for. */
  readonly house: () => Promise<House>;
  readonly seal: <Fields extends object>(fields: Fields) => Promise<Fields & Seal>;
  /** A new key takes the place of the one that signs; that one vouches for it, and is thrown away. */
  readonly renew: (at: string) => Promise<House>;
  /** What is wrong with a seal, as a part of a sentence; undefined where the house that it names signed all of it. */
  readonly findFault: (sealed: Seal) => string | undefined;
  /** SHA-256 of a text, hex. */
  readonly hash: (text: string) => string;
}
