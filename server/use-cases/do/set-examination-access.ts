import type { ExaminationId } from "../../domain/ids.ts";
import { ACCESS_CARD, accessOf, accessWrite, WHOLE_HOUSE } from "../../domain/people/examination-access.ts";
import { isProblem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { findOpenExamination } from "../chronicle/find-open-examination.ts";
import type { ExaminationChanged } from "../examination-changed.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { refuseUnfitAccess } from "../refuse-unfit-access.ts";

/**
 * Says who sees an examination from now on: these persons besides whoever recorded it, or, where none are named at all, the whole
 * house. Only whoever recorded it says so; of one without a card nobody is known to have, so it stays the house's.
 */
export async function setExaminationAccess(
  ports: Acting & { readonly store: Store },
  id: ExaminationId,
  seenBy: readonly string[] | undefined,
): Promise<ExaminationChanged | Refusal> {
  const unable = refuseCaller(ports, "say who sees an examination");
  if (unable) return unable;
  const examination = await findOpenExamination(ports, id);
  if (isRefusal(examination)) return examination;
  const card = await ports.store.card(ACCESS_CARD, id);
  const by = card === undefined ? "" : accessOf(card).by;
  const refusal =
    refuseCaller(ports, "say who sees an examination", { by }) ??
    (await refuseUnfitAccess(ports, seenBy ?? []));
  if (refusal) return refusal;
  const access = { by, seenBy: seenBy === undefined ? [WHOLE_HOUSE] : [...new Set(seenBy)] };
  const along = signed(ports, "say who sees examination", id);
  const cards = [accessWrite(id, card?.version ?? 0, access)];
  const written = await ports.store.writeCards({ ...along, cards });
  return isProblem(written) ? { refused: [written] } : { examination };
}
