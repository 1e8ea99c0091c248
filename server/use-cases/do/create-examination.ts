import type { Piece } from "../../domain/examination.ts";
import { type ExaminationId, id } from "../../domain/ids.ts";
import { sharesTheHouse } from "../../domain/people/caller.ts";
import { accessWrite, WHOLE_HOUSE } from "../../domain/people/examination-access.ts";
import type { NewSuffix } from "../../ports/ids.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { changedOrRefused, type ExaminationChanged } from "../examination-changed.ts";
import type { Refusal } from "../refusal.ts";
import { refuseUnfitAccess } from "../refuse-unfit-access.ts";
import { refuseUnfitPiece } from "../refuse-unfit-piece.ts";

/** Letters and digits of the title, at most 60, so that the id can be told by eye. */
const slugOf = (title: string) =>
  title
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replaceAll(/^-+|-+$/g, "")
    .slice(0, 60)
    .replace(/-+$/, "");

/**
 * Keeps a new examination of the piece, shown to these persons besides the caller, or to the whole house. Refused if the piece
 * contradicts itself or names what the graph does not know.
 */
export async function createExamination(
  ports: Acting & { readonly store: Store; readonly newSuffix: NewSuffix },
  piece: Piece,
  seenBy?: readonly string[],
): Promise<ExaminationChanged | Refusal> {
  const refusal =
    refuseCaller(ports, "record an examination") ??
    (await refuseUnfitPiece(ports, piece)) ??
    (await refuseUnfitAccess(ports, seenBy ?? []));
  if (refusal) return refusal;
  const slug = [slugOf(piece.title), ports.newSuffix()].filter((word) => word !== "").join("-");
  const examination: ExaminationId = id(`examination.${slug}`);
  const along = signed(ports, "record examination", examination);
  const access = { by: along.deed.by, seenBy: seenBy === undefined ? [WHOLE_HOUSE] : [...new Set(seenBy)] };
  const isShared = ports.caller !== undefined && sharesTheHouse(ports.caller);
  const cards = isShared ? { cards: [accessWrite(examination, 0, access)] } : {};
  return changedOrRefused(
    ports,
    examination,
    await ports.store.createExamination(examination, piece, along.deed.at, { ...along, ...cards }),
  );
}
