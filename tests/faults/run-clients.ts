import type { ExaminationId } from "#server/domain/ids.ts";
import type { RandomSource } from "#server/generator/random-source.ts";
import type { Ledger } from "./ledger.ts";
import type { Doors } from "./scribeline-process.ts";
import { sendWrite } from "./send-write.ts";
import type { Answer, Write } from "./write.ts";

export interface Clients {
  /** Until so many writes were answered, by anything. */
  answers(count: number): Promise<void>;
  /** Until so many more were acknowledged, of those sent from now on. */
  kept(count: number): Promise<void>;
  /** Until so many more were refused with this code. */
  refused(code: string, count: number): Promise<void>;
  /** No write is begun any more; resolves when the last has its answer. */
  stop(): Promise<void>;
  /** Longest time until an answer, in milliseconds. */
  slowest(): number;
  /** Answers without a code of ours, and hangs. */
  readonly untyped: readonly string[];
}

/** So many answers of a kind, to writes sent from then on. */
interface Hope {
  left: number;
  readonly isFor: (answer: Answer) => boolean;
  readonly since: number;
  readonly resolve: () => void;
}

/** Examinations that clients know of, with the version they have seen last. */
export type Known = Map<ExaminationId, number>;

/**
 * Lets some clients write one thing after the other, to any of the servers, as long as they are not stopped. Each has
 * examinations of its own and some that it shares with the others, where one of two is refused. `run` begins the keys.
 */
export function runClients({
  doors,
  ledger,
  random,
  run,
  known,
  count = 4,
  patience = 30_000,
  pause = 0,
  most = 1,
}: {
  readonly doors: () => readonly Doors[];
  readonly ledger: Ledger;
  readonly random: RandomSource;
  readonly run: string;
  readonly known: Known;
  readonly count?: number;
  /** How long a client waits for an answer, in milliseconds. */
  readonly patience?: number;
  /** How long it rests where a server does not answer, in milliseconds. */
  readonly pause?: number;
  /** Things that a change adds, at most. */
  readonly most?: number;
}): Clients {
  const untyped: string[] = [];
  let [isStopped, answered, slowest, newest] = [false, 0, 0, 0];
  const waiting: { readonly count: number; readonly resolve: () => void }[] = [];
  const hoping = new Set<Hope>();

  const hopeFor = (left: number, isFor: Hope["isFor"]): Promise<void> =>
    new Promise((resolve) => hoping.add({ left, isFor, since: performance.now(), resolve }));

  const client = async (number: number): Promise<void> => {
    for (let n = 0; !isStopped; n++) {
      const key = `${run}-${number}-${n}`;
      const write = nextWrite(key, random, known, newest, most);
      ledger.sent(write);
      const begun = performance.now();
      const { answer, untyped: said } = await sendWrite(random.pick(doors()), write, patience);
      ledger.answered(key, answer);
      slowest = Math.max(slowest, performance.now() - begun);
      if (said !== undefined) untyped.push(`${write.does}: ${said}`);
      learn(write, answer, known);
      if (answer.is === "kept" && answer.revision) newest = Math.max(newest, answer.revision.number);
      answered++;
      for (const each of hoping)
        if (each.isFor(answer) && begun >= each.since && --each.left === 0) each.resolve();
      for (const each of waiting) if (answered >= each.count) each.resolve();
      if (answer.is === "unanswered") await new Promise((resolve) => setTimeout(resolve, pause));
    }
  };
  const running = Array.from({ length: count }, (_, number) => client(number));
  return {
    untyped,
    slowest: () => slowest,
    answers: (count) =>
      answered >= count ? Promise.resolve() : new Promise((resolve) => waiting.push({ count, resolve })),
    kept: (count) => hopeFor(count, ({ is }) => is === "kept"),
    refused: (code, count) => hopeFor(count, (answer) => answer.is === "refused" && answer.code === code),
    stop: async () => {
      isStopped = true;
      await Promise.all(running);
    },
  };
}

function nextWrite(key: string, random: RandomSource, known: Known, newest: number, most: number): Write {
  const ids = [...known.keys()];
  if (random.chance(0.5) || ids.length === 0) {
    if (random.chance(0.35)) return { key, does: "create" };
    const expected = random.chance(0.2) ? { expected: newest } : {};
    return { key, does: "commit", things: 1 + random.below(3) * random.below(most), ...expected };
  }
  const id = random.pick(ids.slice(-6));
  const on = known.get(id) ?? 1;
  return { key, does: random.pick(["change", "change", "change", "undo", "delete"] as const), id, on };
}

function learn(write: Write, answer: Answer, known: Known): void {
  if (answer.is === "kept" && answer.examination)
    known.set(answer.examination.id, answer.examination.version);
  // A deleted one is brought back by an undo; of one without an answer nobody knows the version.
  else if ("id" in write && answer.is !== "kept") known.delete(write.id);
}
