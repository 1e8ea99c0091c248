import { describe, expect, it } from "vitest";
import type { Edit } from "#server/domain/change.ts";
import type { Claim } from "#server/domain/claim.ts";
import { id } from "#server/domain/ids.ts";
import type { Seed } from "#server/seed/read-seed.ts";
import { seedStore } from "#server/seed/seed-store.ts";
import { updateSeed } from "#server/seed/update-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";
import { aPiece } from "#tests/support/build-piece.ts";

const claim = (when: string): Claim =>
  aClaim({ id: "claim.saw", relation: "introduced", subject: "tool.saw", when });
const put = (...claims: readonly Claim[]): readonly Edit[] => [
  { kind: "term", after: aTerm("tool.saw", "tool") },
  ...claims.map((after): Edit => ({ kind: "claim", after })),
];
const chest = { id: id<"examination">("examination.chest"), piece: aPiece({ parts: ["top"] }) };
const seedOf = (change: readonly Edit[], pieces: Seed["pieces"] = []): Seed => ({
  ...{ change, pieces, at: "2026-01-01T00:00:00Z", by: "seed", message: "A seed" },
});

async function seeded(seed: Seed) {
  const store = openMemoryStore();
  expect(await seedStore(store, seed)).toBe(true);
  return store;
}
const whenOf = async (store: ReturnType<typeof openMemoryStore>, at?: number) =>
  ((await store.claims([id("claim.saw")], at)).get(id("claim.saw")) as { when?: string } | undefined)?.when;

describe("a store that knows an older seed", () => {
  it("stays as it is where the seed is the same", async () => {
    const store = await seeded(seedOf(put(claim("1815"))));
    expect(await updateSeed(store, seedOf(put(claim("1815"))))).toBe(0);
    expect((await store.newestRevision())?.number).toBe(1);
  });

  it("gets what was corrected as a revision of its own, and still answers as before on the old one", async () => {
    const store = await seeded(seedOf(put(claim("1815"))));
    expect(await updateSeed(store, seedOf(put(claim("1770"))))).toBe(1);
    expect((await store.newestRevision())?.number).toBe(2);
    expect([await whenOf(store, 1), await whenOf(store)]).toEqual(["1815", "1770"]);
  });

  it("loses what was taken back, and gets what is new", async () => {
    const store = await seeded(seedOf(put(claim("1815"))));
    const other = aClaim({ id: "claim.other", relation: "attested", subject: "tool.saw", when: "1800" });
    expect(await updateSeed(store, seedOf(put(other)))).toBe(2);
    expect(await whenOf(store)).toBeUndefined();
    expect((await store.claims([id("claim.other")])).size).toBe(1);
  });

  it("is left alone once anybody else has changed the graph", async () => {
    const store = await seeded(seedOf(put(claim("1815"))));
    const edit: Edit = { kind: "claim", before: claim("1815"), after: claim("1790") };
    await store.commit({ change: [edit], by: "a curator", at: "2026-02-01T00:00:00Z", message: "Seen" });
    expect(await updateSeed(store, seedOf(put(claim("1770"))))).toBe(0);
    expect(await whenOf(store)).toBe("1790");
  });

  it("gets demonstrations that it has not, and keeps those that its user changed or deleted", async () => {
    const store = await seeded(seedOf(put(), [chest]));
    await store.deleteExamination(chest.id, 1, "2026-02-01T00:00:00Z");
    const table = { id: id<"examination">("examination.table"), piece: aPiece({ parts: ["leaf"] }) };
    expect(await updateSeed(store, seedOf(put(), [chest, table]))).toBe(0);
    expect((await store.examination(chest.id))?.deleted).toBe(true);
    expect((await store.examination(table.id))?.version).toBe(1);
  });
});
