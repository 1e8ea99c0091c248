import { join } from "node:path";
import { expect, it } from "vitest";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { aCommit } from "#tests/support/build-change.ts";
import { answered } from "#tests/support/expect-answer.ts";
import { countStanding } from "./count-standing.ts";
import { type Ledger, openLedger } from "./ledger.ts";
import { inTemporaryFolder } from "./temporary-folder.ts";
import { type Answer, changeOf, pieceOf, type Write } from "./write.ts";

const at = "2026-11-25T10:00:00.000Z";
const unanswered: Answer = { is: "unanswered", why: "test" };

/** Findings after some writes; what is done to the store and what the ledger says are told apart. */
const findingsOf = (does: (store: Store, ledger: Ledger) => Promise<void>): Promise<readonly string[]> =>
  inTemporaryFolder(async (folder) => {
    const [store, ledger] = [openMemoryStore(), openLedger(join(folder, "ledger.jsonl"))];
    await does(store, ledger);
    return (await countStanding(ledger.entries(), store)).findings;
  });

const commit = (key: string): Write => ({ key, does: "commit", things: 2 });
const keep = async (store: Store, key: string, sent = key): Promise<Answer> => {
  const revision = answered(await store.commit(aCommit(changeOf(sent, 2), { message: key })));
  return { is: "kept", revision };
};
const noted = (ledger: Ledger, write: Write, answer: Answer): void => {
  ledger.sent(write);
  ledger.answered(write.key, answer);
};

it("finds nothing where every write stands as it was answered", async () => {
  const findings = await findingsOf(async (store, ledger) => {
    noted(ledger, commit("a"), await keep(store, "a"));
    await keep(store, "b");
    noted(ledger, commit("b"), unanswered);
    noted(ledger, commit("c"), unanswered);
    noted(ledger, commit("d"), { is: "refused", code: "STALE_CHANGE" });
    const made = answered(await store.createExamination("examination.e" as never, pieceOf("e"), at));
    noted(ledger, { key: "e", does: "create" }, { is: "kept", examination: made });
    const gone = answered(await store.deleteExamination(made.id, 1, at));
    noted(ledger, { key: "f", does: "delete", id: made.id, on: 1 }, { is: "kept", examination: gone });
    await store.undoExamination(made.id, 2, at);
    noted(ledger, { key: "g", does: "undo", id: made.id, on: 2 }, unanswered);
  });
  expect(findings).toEqual([]);
});

it.each<[string, RegExp, (store: Store, ledger: Ledger) => Promise<void>]>([
  [
    "an acknowledged change that is lost",
    /a was acknowledged as revision 1 and is lost/,
    async (_, ledger) => noted(ledger, commit("a"), { is: "kept", revision: { number: 1, hash: "h" } }),
  ],
  [
    "an acknowledged change that is another revision",
    /a was acknowledged as revision 2 and is revision 1/,
    async (store, ledger) => {
      const answer = await keep(store, "a");
      noted(ledger, commit("a"), { ...answer, revision: { number: 2, hash: "h" } } as Answer);
    },
  ],
  [
    "a change that stands twice",
    /a stands 2 times: revision 1, revision 2/,
    async (store, ledger) => {
      await keep(store, "a");
      await keep(store, "a", "other");
      noted(ledger, commit("a"), unanswered);
    },
  ],
  [
    "a change that is not what was sent",
    /revision 1 is not as a was sent/,
    async (store, ledger) => noted(ledger, commit("a"), await keep(store, "a", "other")),
  ],
  [
    "a refused change that stands",
    /a was refused with STORE_FULL and stands/,
    async (store, ledger) => {
      await keep(store, "a");
      noted(ledger, commit("a"), { is: "refused", code: "STORE_FULL" });
    },
  ],
  [
    "a change that nobody sent",
    /revision 1 \(a\) stands and nobody sent it/,
    async (store) => void (await keep(store, "a")),
  ],
  [
    "changes in another order than they were acknowledged in",
    /b is revision 1 and was sent when 2 had been acknowledged/,
    async (store, ledger) => {
      const [b, a] = [await keep(store, "b"), await keep(store, "a")];
      noted(ledger, commit("a"), a);
      noted(ledger, commit("b"), b);
    },
  ],
  [
    "a version that is not what was sent",
    /examination.e 1 is not as e was sent/,
    async (store, ledger) => {
      const piece = { ...pieceOf("e"), note: "Something else." };
      const made = answered(await store.createExamination("examination.e" as never, piece, at));
      noted(ledger, { key: "e", does: "create" }, { is: "kept", examination: made });
    },
  ],
  [
    "a version that was written twice",
    /examination.e 3 \(f\) stands and nobody sent it/,
    async (store, ledger) => {
      const made = answered(await store.createExamination("examination.e" as never, pieceOf("e"), at));
      noted(ledger, { key: "e", does: "create" }, { is: "kept", examination: made });
      const changed = answered(await store.changeExamination(made.id, 1, pieceOf("f"), at));
      answered(await store.changeExamination(made.id, 2, pieceOf("f"), at));
      const write: Write = { key: "f", does: "change", id: made.id, on: 1 };
      noted(ledger, write, { is: "kept", examination: changed });
    },
  ],
])("finds %s", async (_, finding, does) => {
  expect((await findingsOf(does)).join("\n")).toMatch(finding);
});
