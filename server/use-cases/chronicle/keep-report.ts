import { canonicalJson } from "../../domain/canonical-json.ts";
import {
  type KeptReportFields,
  keptReportWrites,
  type ListedReport,
  listedReportOf,
} from "../../domain/chronicle/kept-report.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { isProblem } from "../../domain/problem.ts";
import { NO_HASH } from "../../domain/revision.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Results } from "../../ports/results.ts";
import type { Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { examinePiece } from "../ask/examine-piece.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { findOpenExamination } from "./find-open-examination.ts";

/** Examines a stored examination on the newest revision, signs the report, and keeps it with all that it follows from. */
export async function keepReport(
  ports: Acting & {
    readonly store: Store;
    readonly results: Results;
    readonly seals: Seals;
    readonly newSuffix: NewSuffix;
  },
  id: ExaminationId,
): Promise<ListedReport | Refusal> {
  const refusal = refuseCaller(ports, "record an examination");
  if (refusal) return refusal;
  const examination = await findOpenExamination(ports, id);
  if (isRefusal(examination)) return examination;
  const newest = await ports.store.newestRevision();
  const examined = await examinePiece(ports, examination.piece, newest?.number ?? 0);
  if (isRefusal(examined)) return examined;
  const along = signed(ports, "sign report", id);
  const { by, at } = along.deed;
  const kept = await ports.seals.seal<KeptReportFields>({
    ...{ format: "scribeline/kept-report", version: 1, examination: id, record: examination.version },
    ...{ revision: newest?.number ?? 0, hash: newest?.hash ?? NO_HASH, at, by },
    ...{ piece: examination.piece, report: examined.report },
  });
  const digest = ports.seals.hash(`${canonicalJson(examined.report)}\n`);
  const cards = keptReportWrites(ports.newSuffix(), kept, digest);
  const written = await ports.store.writeCards({ ...along, cards });
  if (isProblem(written)) return { refused: [written] };
  const [{ kind, id: card, next }] = cards as [(typeof cards)[0]];
  return listedReportOf({ kind, id: card, version: 1, keys: {}, body: next?.body });
}
