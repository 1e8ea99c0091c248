import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import type { Role } from "#server/domain/people/caller.ts";
import { isProblem } from "#server/domain/problem.ts";
import { type Checkpoint, checkpointWrite } from "#server/domain/proof/checkpoint.ts";
import type { Store } from "#server/ports/store.ts";
import { openSeals } from "#server/proof/open-seals.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { judgeCheckpoint } from "#server/use-cases/chronicle/judge-checkpoint.ts";
import { listCheckpoints } from "#server/use-cases/chronicle/list-checkpoints.ts";
import { proveHistory } from "#server/use-cases/chronicle/prove-history.ts";
import { renewHouseKey } from "#server/use-cases/chronicle/renew-house-key.ts";
import { signCheckpoint } from "#server/use-cases/chronicle/sign-checkpoint.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { aCommit, adding, aTerm } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";

const folder = mkdtempSync(join(tmpdir(), "scribeline-checkpoints-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
let count = 0;
const now = () => new Date(Date.UTC(2026, 10, 25, 10, 0, count++)).toISOString();
const seals = openSeals(folder, now);

const as = (store: Store, role: Role = "owner", via: "session" | "token" = "session") => ({
  ...{ store, seals, now, newSuffix: () => `s${count++}` },
  caller: { id: `person.${role}`, role, via },
});
const made = <Answer extends object>(answer: Answer): Exclude<Answer, { refused: unknown }> => {
  if (isRefusal(answer)) throw new Error(answer.refused[0].message);
  return answer as Exclude<Answer, { refused: unknown }>;
};
async function filled(...names: readonly string[]): Promise<Store> {
  const store = openMemoryStore();
  for (const name of names) answered(await store.commit(aCommit(adding(aTerm(name)))));
  return store;
}

describe("checkpoints", () => {
  let store: Store;
  let checkpoint: Checkpoint;
  beforeEach(async () => {
    store = await filled("tool.saw", "tool.plane");
    checkpoint = made(await signCheckpoint(as(store))).checkpoint;
  });
  const judged = (in_: Store, of: Checkpoint = checkpoint) => judgeCheckpoint({ store: in_, seals }, of);

  it("[I1] name the newest revision and write with their hashes, and are kept with who signed", async () => {
    const newest = await store.newestRevision();
    const [, write, kept] = await store.writesAfter(0, 9);
    expect(checkpoint).toMatchObject({ revision: 2, head: newest?.hash, sequence: 2, ledger: write?.hash });
    expect(kept).toMatchObject({ deed: { by: "person.owner", did: "sign checkpoint" } });
    const listed = made(await listCheckpoints(as(store, "reader"), undefined));
    expect(listed).toMatchObject({ total: 1, house: { house: checkpoint.house } });
    expect(listed.checkpoints).toMatchObject([{ holds: true, checkpoint }]);
  });

  it("[I1] are signed for owners alone, by no token", async () => {
    for (const who of [as(store, "reviewer"), as(store, "owner", "token")])
      expect(await signCheckpoint(who)).toMatchObject({ refused: [{ code: "NOT_ALLOWED" }] });
    expect(await renewHouseKey(as(store, "reviewer"))).toMatchObject({ refused: [{ code: "NOT_ALLOWED" }] });
    expect(await store.newestWrite()).toBe(3);
  });

  it("[I2] [I3] hold while the store goes on, and after the key was renewed", async () => {
    answered(await store.commit(aCommit(adding(aTerm("tool.adze")))));
    made(await renewHouseKey(as(store)));
    const later = made(await signCheckpoint(as(store))).checkpoint;
    expect(later.keys.length).toBe(checkpoint.keys.length + 1);
    expect([await judged(store), await judged(store, later)]).toMatchObject([
      { holds: true },
      { holds: true },
    ]);
    expect(await proveHistory(as2(store), () => {})).toMatchObject({ revisions: 3, checkpoints: 2 });
  });

  it("[I3] say what is otherwise: cut off, rewritten, other deeds, changed after it was signed", async () => {
    expect(await judged(await filled("tool.saw"))).toEqual({
      holds: false,
      says: expect.stringMatching(/tells of revision 2, and the newest here is 1/),
    });
    expect((await judged(await filled("tool.saw", "tool.axe"))).says).toMatch(
      /^Revision 2 has another hash here/,
    );
    const others = openMemoryStore();
    answered(await others.commit(aCommit(adding(aTerm("tool.saw")))));
    const deed = { by: "person.x", at: now(), did: "sign in" };
    answered(await others.commit({ ...aCommit(adding(aTerm("tool.plane"))), deed }));
    expect((await judged(others)).says).toMatch(/^Revision 2 is here as it was signed, but write 2/);
    expect((await judged(store, { ...checkpoint, revision: 1 })).says).toMatch(
      /proves nothing: it was changed/,
    );
    const empty = openMemoryStore();
    expect((await judged(empty)).holds).toBe(false);
    const ofNothing = made(await signCheckpoint(as(empty))).checkpoint;
    expect([await judged(empty, ofNothing), await judged(store, ofNothing)]).toMatchObject([
      { holds: true },
      { holds: true },
    ]);
  });

  it("[I4] prove the history, and a checkpoint that does not hold is found with its place", async () => {
    expect(await proveHistory(as2(store), () => {})).toMatchObject({ revisions: 2, checkpoints: 1 });
    const rewritten = await filled("tool.saw", "tool.axe");
    answered(
      await rewritten.writeCards({
        deed: { by: "person.x", at: now(), did: "sign checkpoint" },
        cards: [checkpointWrite("forged", checkpoint)],
      }),
    );
    const told: string[] = [];
    const proven = await proveHistory(as2(rewritten), (words) => told.push(words()));
    expect(isProblem(proven) && [proven.code, proven.path.slice(-2)]).toEqual([
      "STORE_CORRUPT",
      ["revision", 2],
    ]);
    expect(told.length).toBeGreaterThan(1);
  });

  const as2 = (of: Store) => ({ store: of, seals, verify: of.verify });
});
