import type { Change } from "#server/domain/change.ts";
import type { Piece } from "#server/domain/examination.ts";
import type { TermId } from "#server/domain/ids.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import { readSeed } from "#server/seed/read-seed.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { examinePiece } from "#server/use-cases/ask/examine-piece.ts";
import { isRefusal } from "#server/use-cases/refusal.ts";
import { makeStripGroups } from "#web/strips/make-strip-groups.ts";
import type { StripGroup } from "#web/strips/strip-row.ts";

export interface ExaminedHere {
  readonly report: Report;
  readonly words: ReportWords;
  readonly groups: readonly StripGroup[];
}

/** The seed graph as a change, as it is or without some of its claims. Exceptions of a claim go with it. */
export async function seedChange(without: readonly string[] = []): Promise<Change> {
  const seed = await readSeed("seed-data");
  if (isProblem(seed)) throw new Error(seed.message);
  return seed.change.filter((edit) => {
    const after = edit.after as { readonly id: string; readonly of?: string };
    return !without.includes(after.id) && !(after.of !== undefined && without.includes(after.of));
  });
}

/** Examines pieces on the seed graph, or on what is left of it, and makes the strips that a page would show. */
export async function openSeedExaminer(change: Change): Promise<(piece: Piece) => Promise<ExaminedHere>> {
  const store = openMemoryStore();
  const revision = await store.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
  if (isProblem(revision)) throw new Error(revision.message);
  return async (piece) => {
    const examined = await examinePiece({ store }, piece);
    if (isRefusal(examined)) throw new Error(examined.refused.map(({ message }) => message).join(" "));
    const { report, words } = examined;
    const glossary = { labelOf: (term: TermId) => term, findClaim: () => undefined };
    return { report, words, groups: makeStripGroups(report, words, piece.parts, glossary) };
  };
}
