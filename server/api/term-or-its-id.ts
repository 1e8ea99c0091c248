import type { TermId } from "../domain/ids.ts";
import { TERM_KINDS, type Term } from "../domain/term.ts";
import type { Context } from "./context.ts";

/** The term as it stands, or, withdrawn since the piece was recorded, one that shows its id for a label. */
export async function termOrItsId({ load }: Context, id: TermId): Promise<Term> {
  const term = await load.terms.one(id, undefined);
  if (term) return term;
  const kind = TERM_KINDS.find((known) => id.startsWith(`${known}.`)) ?? "feature";
  return { id, kind, label: id };
}
