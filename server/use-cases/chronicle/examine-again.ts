import { canonicalJson } from "../../domain/canonical-json.ts";
import type { KeptReport } from "../../domain/chronicle/kept-report.ts";
import { type DifferingPlace, findDiffering } from "../../domain/find-differing.ts";
import { problem } from "../../domain/problem.ts";
import { NO_HASH } from "../../domain/revision.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { examinePiece } from "../ask/examine-piece.ts";
import { isRefusal, type Refusal } from "../refusal.ts";

/** Places told; the rest are likely to follow from these. */
const MOST_PLACES = 20;

/** What came of examining again. */
export interface ExaminedAgain {
  readonly isSame: boolean;
  /** SHA-256 of the report as it was signed and as it was made again, each as canonical JSON and one line feed. */
  readonly before: string;
  readonly now: string;
  readonly differences: readonly DifferingPlace[];
  /** In one or two sentences. */
  readonly says: string;
}

/**
 * Examines the piece of a kept report again on the revision of its day and compares the bytes. Kept answers are not asked: it is
 * all made anew. Refuses what was changed since it was signed (`BROKEN_SEAL`) and another history (`OTHER_HISTORY`).
 */
export async function examineAgain(
  { store, seals }: { readonly store: Store; readonly seals: Pick<Seals, "findFault" | "hash"> },
  kept: KeptReport,
): Promise<ExaminedAgain | Refusal> {
  const fault = seals.findFault(kept);
  if (fault !== undefined)
    return { refused: [problem("BROKEN_SEAL", `The signed report proves nothing: ${fault}.`)] };
  const hash = kept.revision === 0 ? NO_HASH : (await store.revision(kept.revision))?.hash;
  if (hash !== kept.hash)
    return {
      refused: [
        problem(
          "OTHER_HISTORY",
          hash === undefined
            ? `The report was made on revision ${kept.revision}, which is not here; ask the house that signed it.`
            : `The report was made on revision ${kept.revision} with another hash: the history here is another, or was rewritten.`,
          ["revision"],
        ),
      ],
    };
  const examined = await examinePiece({ store }, kept.piece, kept.revision);
  if (isRefusal(examined)) return examined;
  const [textBefore, textNow] = [kept.report, examined.report].map((report) => `${canonicalJson(report)}\n`);
  const isSame = textBefore === textNow;
  const differences = isSame ? [] : findDiffering(kept.report, examined.report, MOST_PLACES);
  const otherEngine =
    kept.report.engine === examined.report.engine
      ? ""
      : ` It was made by ${kept.report.engine}, and this is ${examined.report.engine}.`;
  return {
    ...{ isSame, before: seals.hash(textBefore ?? ""), now: seals.hash(textNow ?? ""), differences },
    says: isSame
      ? `Examined again on revision ${kept.revision}, it is the same report, byte for byte.`
      : `Examined again on revision ${kept.revision}, it is another report: ${differences.length === MOST_PLACES ? `at least ${MOST_PLACES}` : differences.length} ${differences.length === 1 ? "place differs" : "places differ"}.${otherEngine}`,
  };
}
