import { fsyncSync, openSync, writeSync } from "node:fs";
import type { Answer, Write } from "./write.ts";

/** A write as its client saw it. `sentAt` and `answeredAt` number the events of the ledger. */
export interface Entry {
  readonly write: Write;
  readonly sentAt: number;
  readonly answer?: Answer;
  readonly answeredAt?: number;
}

/** What clients sent and were told, kept by them, outside the process that fails. */
export interface Ledger {
  sent(write: Write): void;
  answered(key: string, answer: Answer): void;
  /** In the order in which they were sent. */
  readonly entries: () => readonly Entry[];
}

/** Each event is on the disk before anybody acts on it. */
export function openLedger(file: string): Ledger {
  const handle = openSync(file, "a", 0o600);
  const entries = new Map<string, Entry>();
  let events = 0;
  const keep = (event: object): number => {
    writeSync(handle, `${JSON.stringify(event)}\n`);
    fsyncSync(handle);
    return ++events;
  };
  return {
    sent: (write) => {
      if (entries.has(write.key)) throw new Error(`${write.key} was sent already`);
      entries.set(write.key, { write, sentAt: keep({ sent: write }) });
    },
    answered: (key, answer) => {
      const entry = entries.get(key);
      if (entry === undefined || entry.answer !== undefined) throw new Error(`${key} waits for no answer`);
      entries.set(key, { ...entry, answer, answeredAt: keep({ key, answer }) });
    },
    entries: () => [...entries.values()],
  };
}
