import { canonicalJson } from "../canonical-json.ts";

/** One of the keys that a house signs with, one after the other. */
export interface HouseKey {
  /** Ed25519 (RFC 8032), 32 bytes as base64url. */
  readonly publicKey: string;
  /** ISO 8601 time in UTC from which on it was used. */
  readonly since: string;
  /** What the key before signed when it handed over to this one, 64 bytes as base64url; the first has none. */
  readonly handover?: string;
}

/** What vouches for a file: who signed it, by which keys, and the signature over all its other members. */
export interface Seal {
  /** Follows from the first key, so that nobody else can take the name. */
  readonly house: string;
  /** The first key of the house, and those it was handed over to; the last one signed. */
  readonly keys: readonly HouseKey[];
  /** Ed25519 over the canonical JSON (RFC 8785) of all other members, 64 bytes as base64url. */
  readonly signature: string;
}

/** What is signed of a sealed value. */
export const sealedText = ({ signature: _, ...rest }: Partial<Seal>): string => canonicalJson(rest);

/** What a key signs when it hands over to the next. */
export const handoverText = (house: string, { publicKey, since }: HouseKey): string =>
  canonicalJson({ format: "scribeline/handover", house, publicKey, since });
