import { createPrivateKey, generateKeyPairSync, type KeyObject, randomBytes, sign } from "node:crypto";
import { chmod, link, mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { findBrokenSeal, houseOf } from "../chain/find-broken-seal.ts";
import { sha256 } from "../chain/sha256.ts";
import { type HouseKey, handoverText, type Seal, sealedText } from "../domain/proof/seal.ts";
import type { House, Seals } from "../ports/seals.ts";

/** Name of the file of the key in the data folder. */
export const HOUSE_KEY_FILE = "house-key.json";

/** What the file holds: the public keys so far, and the private half of the last (Ed25519, base64url). */
interface Kept extends House {
  readonly privateKey: string;
}

const signText = (text: string, key: KeyObject): string =>
  sign(null, Buffer.from(text, "utf8"), key).toString("base64url");

function newPair(): { readonly publicKey: string; readonly privateKey: string } {
  const { x = "", d = "" } = generateKeyPairSync("ed25519").privateKey.export({ format: "jwk" });
  return { publicKey: x, privateKey: d };
}

const privateKeyOf = ({ keys, privateKey }: Kept): KeyObject =>
  createPrivateKey({
    format: "jwk",
    key: { kty: "OKP", crv: "Ed25519", x: keys.at(-1)?.publicKey ?? "", d: privateKey },
  });

/**
 * Signs with the key in the data folder, which nobody else of the machine may read (0600). It is made when it is first needed,
 * and read each time, so that several servers of one folder sign alike.
 */
export function openSeals(folder: string, now: () => string): Seals {
  const file = join(folder, HOUSE_KEY_FILE);

  /** Written beside it first: what stands under the name is always whole. */
  async function write(kept: Kept, put: (part: string) => Promise<void>): Promise<void> {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    const part = `${file}.${randomBytes(6).toString("hex")}.part`;
    try {
      await writeFile(part, `${JSON.stringify(kept)}\n`, { mode: 0o600, flush: true });
      await chmod(part, 0o600);
      await put(part);
    } finally {
      await rm(part, { force: true });
    }
  }
  async function find(): Promise<Kept | undefined> {
    try {
      return JSON.parse(await readFile(file, "utf8")) as Kept;
    } catch (failure) {
      if ((failure as NodeJS.ErrnoException).code === "ENOENT") return undefined;
      throw failure;
    }
  }
  async function current(): Promise<Kept> {
    const found = await find();
    if (found !== undefined) return found;
    const { publicKey, privateKey } = newPair();
    const made = { house: houseOf(publicKey), keys: [{ publicKey, since: now() }], privateKey };
    // Of two that make one at the same time, the first counts.
    await write(made, (part) => link(part, file)).catch((failure: NodeJS.ErrnoException) => {
      if (failure.code !== "EEXIST") throw failure;
    });
    return (await find()) ?? made;
  }
  const asOthersKnow = ({ house, keys }: Kept): House => ({ house, keys });

  return {
    house: async () => asOthersKnow(await current()),
    seal: async (fields) => {
      const kept = await current();
      const vouched = { ...fields, ...asOthersKnow(kept) };
      return { ...vouched, signature: signText(sealedText(vouched), privateKeyOf(kept)) };
    },
    renew: async (since) => {
      const kept = await current();
      const { publicKey, privateKey } = newPair();
      const next: HouseKey = { publicKey, since };
      const handover = signText(handoverText(kept.house, next), privateKeyOf(kept));
      const renewed = { ...kept, keys: [...kept.keys, { ...next, handover }], privateKey };
      await write(renewed, (part) => rename(part, file));
      return asOthersKnow(renewed);
    },
    findFault: (sealed: Seal) => findBrokenSeal(sealed),
    hash: sha256,
  };
}
