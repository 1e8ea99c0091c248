import { chmodSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { HOUSE_KEY_FILE, openSeals } from "#server/proof/open-seals.ts";

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});
const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-seals-"));
  folders.push(folder);
  return folder;
};
const now = () => "2026-11-25T10:00:00.000Z";

describe("[I2] the key of a house", () => {
  it("is made once, also by two at the same time, and is read by nobody else", async () => {
    const folder = join(newFolder(), "data");
    const [one, other] = await Promise.all([openSeals(folder, now).house(), openSeals(folder, now).house()]);
    expect(one).toEqual(other);
    expect(await openSeals(folder, now).house()).toEqual(one);
    expect(statSync(join(folder, HOUSE_KEY_FILE)).mode & 0o777).toBe(0o600);
    expect(readdirSync(folder)).toEqual([HOUSE_KEY_FILE]);
    expect(one.house).toMatch(/^house\.[0-9a-f]{20}$/);
    expect(JSON.stringify(one)).not.toContain(
      JSON.parse(readFileSync(join(folder, HOUSE_KEY_FILE), "utf8")).privateKey,
    );
  });

  it("signs all of a value, so that no member of it can be another", async () => {
    const seals = openSeals(newFolder(), now);
    const sealed = await seals.seal({ format: "x", list: [1, { b: 2, a: "ä" }] });
    expect(seals.findFault(sealed)).toBeUndefined();
    expect(seals.findFault(JSON.parse(JSON.stringify(sealed)))).toBeUndefined();
    const changed: readonly object[] = [
      { ...sealed, list: [1, { b: 3, a: "ä" }] },
      { ...sealed, more: 1 },
      { ...sealed, keys: [{ ...sealed.keys[0], since: "2020-01-01T00:00:00Z" }] },
      { ...sealed, signature: (await seals.seal({ format: "y" })).signature },
    ];
    for (const value of changed)
      expect(seals.findFault(value as typeof sealed)).toMatch(/changed after it was signed/);
    expect(seals.findFault({ ...sealed, keys: [] })).toMatch(/name of the house/);
  });

  it("hands over to a new one, under the same name, and what was signed before still checks", async () => {
    const folder = newFolder();
    const seals = openSeals(folder, now);
    const before = await seals.seal({ n: 1 });
    const renewed = await seals.renew("2026-11-26T10:00:00.000Z");
    const after = await seals.seal({ n: 1 });
    expect([renewed.house, renewed.keys.length]).toEqual([before.house, 2]);
    expect([seals.findFault(before), seals.findFault(after)]).toEqual([undefined, undefined]);
    expect(after.signature).not.toBe(before.signature);
    chmodSync(join(folder, HOUSE_KEY_FILE), 0o600);
    expect((await openSeals(folder, now).house()).keys).toEqual(renewed.keys);
  });

  it("cannot be taken over by a stranger's key, nor the name by another house", async () => {
    const [seals, stranger] = [openSeals(newFolder(), now), openSeals(newFolder(), now)];
    const { keys, house } = await seals.house();
    const forged = await stranger.seal({ n: 1 });
    expect(seals.findFault({ ...forged, house })).toMatch(/name of the house/);
    expect(seals.findFault({ ...forged, house, keys: [...keys, ...forged.keys] } as typeof forged)).toMatch(
      /key 2 was not vouched for/,
    );
  });
});
