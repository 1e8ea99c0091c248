import {
  KEPT_REPORT_BODY_CARD,
  KEPT_REPORT_CARD,
  type KeptReport,
  keptReportOf,
  type ListedReport,
  listedReportOf,
} from "../../domain/chronicle/kept-report.ts";
import type { ExaminationId } from "../../domain/ids.ts";
import { problem } from "../../domain/problem.ts";
import { LARGEST_PAGE, type Store } from "../../ports/store.ts";
import { type Acting, refuseCaller } from "../acting.ts";
import { findExamination } from "../ask/find-examination.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { findOpenExamination } from "./find-open-examination.ts";

type Ports = Acting & { readonly store: Store };

/** The reports that were signed of an examination, newest first, the latest 200. */
export async function listKeptReports(
  ports: Ports,
  examination: ExaminationId,
): Promise<{ readonly reports: readonly ListedReport[] } | Refusal> {
  const refusal = refuseCaller(ports, "read an examination");
  if (refusal) return refusal;
  const found = await findOpenExamination(ports, examination);
  if (isRefusal(found)) return found;
  const { rows } = await ports.store.listCards(
    { kind: KEPT_REPORT_CARD, key: { name: "examination", value: examination } },
    { first: LARGEST_PAGE },
    "down",
  );
  return { reports: rows.map(listedReportOf) };
}

/** A kept report as it was signed. That of an examination which is not shown to the caller is as if it were not there. */
export async function findKeptReport(ports: Ports, id: string): Promise<KeptReport | Refusal> {
  const refusal = refuseCaller(ports, "read an examination");
  if (refusal) return refusal;
  const card = await ports.store.card(KEPT_REPORT_BODY_CARD, id);
  const kept = card && keptReportOf(card);
  if (kept === undefined || (await findExamination(ports, kept.examination)) === undefined)
    return { refused: [problem("UNKNOWN_REPORT", `There is no signed report ${id}.`, ["id"])] };
  const found = await findOpenExamination(ports, kept.examination);
  return isRefusal(found) ? found : kept;
}
