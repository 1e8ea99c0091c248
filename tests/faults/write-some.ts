import type { ExaminationId } from "#server/domain/ids.ts";
import { isProblem, type Problem } from "#server/domain/problem.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { Store } from "#server/ports/store.ts";
import { aCommit } from "#tests/support/build-change.ts";
import type { Entry } from "./ledger.ts";
import { type Answer, changeOf, pieceOf, type Write } from "./write.ts";

const at = "2026-11-25T10:00:00.000Z";

/** Writes to a store in this process, one after the other, and keeps what was said of each. */
export interface Writer {
  readonly entries: readonly Entry[];
  next(): Promise<Entry>;
}

/** A writer whose keys begin with `run`. */
export function openWriter(store: Store, random: RandomSource, run: string): Writer {
  const entries: Entry[] = [];
  const known = new Map<ExaminationId, number>();
  return {
    entries,
    next: async () => {
      const number = entries.length;
      const write = draw(`${run}-${number}`, random, known);
      const answer = await send(store, write);
      if (answer.is === "kept" && answer.examination)
        known.set(answer.examination.id, answer.examination.version);
      const entry = { write, sentAt: 2 * number, answer, answeredAt: 2 * number + 1 };
      entries.push(entry);
      return entry;
    },
  };
}

function draw(key: string, random: RandomSource, known: ReadonlyMap<ExaminationId, number>): Write {
  const ids = [...known.keys()];
  if (random.chance(0.5)) return { key, does: "commit", things: 1 + random.skewed(9) };
  if (ids.length === 0 || random.chance(0.3)) return { key, does: "create" };
  const id = random.pick(ids);
  return {
    key,
    does: random.pick(["change", "change", "undo", "delete"] as const),
    id,
    on: known.get(id) ?? 1,
  };
}

/** Sends a write to a store in this process. */
export async function send(store: Store, write: Write): Promise<Answer> {
  if (write.does === "commit") {
    const revision = await store.commit(
      aCommit(changeOf(write.key, write.things), { message: write.key, at, ...pick(write) }),
    );
    return isProblem(revision) ? refusalOf(revision) : { is: "kept", revision };
  }
  const done = await sendVersion(store, write);
  return isProblem(done) ? refusalOf(done) : { is: "kept", examination: done };
}

/** Where the store was not heard of, nobody knows. */
const refusalOf = ({ code }: Problem): Answer =>
  code === "STORE_UNREACHABLE" ? { is: "unanswered", why: code } : { is: "refused", code };

const pick = ({ expected }: { readonly expected?: number }) => (expected === undefined ? {} : { expected });

function sendVersion(store: Store, write: Exclude<Write, { does: "commit" }>) {
  if (write.does === "create")
    return store.createExamination(`examination.${write.key}` as ExaminationId, pieceOf(write.key), at);
  if (write.does === "change") return store.changeExamination(write.id, write.on, pieceOf(write.key), at);
  if (write.does === "undo") return store.undoExamination(write.id, write.on, at);
  return store.deleteExamination(write.id, write.on, at);
}
