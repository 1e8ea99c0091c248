import { checkPiece } from "../domain/check-piece.ts";
import type { Piece } from "../domain/examination.ts";
import type { TermId } from "../domain/ids.ts";
import type { RevisionNumber } from "../domain/revision.ts";
import { TERM_KINDS, type Term } from "../domain/term.ts";
import { LARGEST_PAGE, type Store } from "../ports/store.ts";
import { type Refusal, refusalFrom } from "./refusal.ts";
import { termsOfPiece } from "./terms-of-piece.ts";

/** Unknown terms for which others are looked up that may have been meant. */
const MOST_UNKNOWN = 5;
const OFFERED = 20;

/** Why a piece cannot be kept or examined on a revision: it contradicts itself, or names what the graph does not know. */
export async function refuseUnfitPiece(
  { store }: { readonly store: Store },
  piece: Piece,
  at?: RevisionNumber,
): Promise<Refusal | undefined> {
  const named = termsOfPiece(piece);
  const terms = await store.terms(named, at);
  const unknown = named.filter((id) => !terms.has(id));
  const candidates = await termsLike(store, unknown.slice(0, MOST_UNKNOWN), at);
  return refusalFrom(checkPiece(piece, (id) => terms.get(id), candidates));
}

/** What unknown ids may have meant: terms that their words find, and the first page of their kind. */
async function termsLike(
  store: Store,
  ids: readonly TermId[],
  at: RevisionNumber | undefined,
): Promise<readonly Term[]> {
  const found = new Map<TermId, Term>();
  for (const id of ids) {
    const [prefix, ...rest] = id.split(/[._-]+/);
    const hits = await store.search(rest.join(" "), {}, OFFERED);
    for (const [hit, term] of await store.terms(
      hits.map(({ term }) => term),
      at,
    ))
      found.set(hit, term);
    const kinds = TERM_KINDS.filter((kind) => kind === prefix);
    const page = await store.listTerms({ kinds }, { first: LARGEST_PAGE }, at);
    for (const term of page.rows) found.set(term.id, term);
  }
  return [...found.values()];
}
