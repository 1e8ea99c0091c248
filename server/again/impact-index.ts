import type { ExaminationId, TermId } from "../domain/ids.ts";
import { openPostings, type Postings } from "./postings.ts";
import type { Touch } from "./touch-of.ts";

/** What the answer for one examination was read from. */
export interface Reads {
  /** Terms the walk came to. A claim about one of them is part of the answer, a new one too. */
  readonly visited: Iterable<TermId>;
  /** Terms that were read beside: named by a claim, broader than another, or a seed that is no term yet. */
  readonly beside: Iterable<TermId>;
}

/** Which examinations were read from which terms, both ways, as arrays of numbers. */
export interface ImpactIndex {
  readonly put: (examination: ExaminationId, reads: Reads) => void;
  readonly drop: (examination: ExaminationId) => void;
  /** Every examination whose answer the change can have changed, and some beside (K4). */
  readonly touchedBy: (touch: Touch) => ReadonlySet<ExaminationId>;
  readonly clear: () => void;
  readonly size: () => {
    readonly examinations: number;
    readonly entries: number;
    readonly bytes: number;
  };
}

/** One number for a thing read and how: twice its own number, and one more where it was visited. */
const VISITED = 1;

export function openImpactIndex(): ImpactIndex {
  const termNumbers = new Map<TermId, number>();
  const byTerm: Postings[] = [];
  const slots = new Map<ExaminationId, number>();
  const examinations: (ExaminationId | undefined)[] = [];
  const readBy: (Int32Array | undefined)[] = [];
  const free: number[] = [];

  const numberOf = (term: TermId): number => {
    const known = termNumbers.get(term);
    if (known !== undefined) return known;
    termNumbers.set(term, byTerm.length);
    return byTerm.push(openPostings()) - 1;
  };
  const slotOf = (examination: ExaminationId): number => {
    const known = slots.get(examination);
    if (known !== undefined) return known;
    const slot = free.pop() ?? examinations.length;
    slots.set(examination, slot);
    examinations[slot] = examination;
    return slot;
  };
  const replace = (slot: number, next: Int32Array): void => {
    const before = readBy[slot] ?? new Int32Array(0);
    eachOnlyIn(before, next, (read) => byTerm[read >> 1]?.remove(slot * 2 + (read & VISITED)));
    eachOnlyIn(next, before, (read) => byTerm[read >> 1]?.add(slot * 2 + (read & VISITED)));
    readBy[slot] = next;
  };

  return {
    put: (examination, { visited, beside }) => {
      const read = new Set<number>();
      for (const term of visited) read.add(numberOf(term) * 2 + VISITED);
      for (const term of beside) {
        const number = numberOf(term) * 2;
        if (!read.has(number + VISITED)) read.add(number);
      }
      replace(slotOf(examination), Int32Array.from(read).sort());
    },
    drop: (examination) => {
      const slot = slots.get(examination);
      if (slot === undefined) return;
      replace(slot, new Int32Array(0));
      slots.delete(examination);
      examinations[slot] = undefined;
      readBy[slot] = undefined;
      free.push(slot);
    },
    touchedBy: ({ subjects, terms }) => {
      const touched = new Set<number>();
      const meet = (term: TermId, isWanted: (packed: number) => boolean): void => {
        const number = termNumbers.get(term);
        if (number === undefined) return;
        for (const packed of byTerm[number]?.all() ?? []) if (isWanted(packed)) touched.add(packed >> 1);
      };
      for (const subject of subjects) meet(subject, (packed) => (packed & VISITED) === VISITED);
      for (const term of terms) meet(term, () => true);
      return new Set([...touched].flatMap((slot) => examinations[slot] ?? []));
    },
    clear: () => {
      for (const list of [byTerm, examinations, readBy, free]) list.length = 0;
      termNumbers.clear();
      slots.clear();
    },
    size: () => {
      const forward = readBy.reduce((sum, read) => sum + (read?.length ?? 0), 0);
      const inverted = byTerm.reduce((sum, postings) => sum + postings.bytes(), 0);
      return { examinations: slots.size, entries: forward, bytes: forward * 4 + inverted };
    },
  };
}

/** Calls with each number of the first array that is not in the second; both ascend. */
function eachOnlyIn(one: Int32Array, other: Int32Array, call: (number: number) => void): void {
  let at = 0;
  for (const number of one) {
    while (at < other.length && (other[at] as number) < number) at++;
    if (other[at] !== number) call(number);
  }
}
