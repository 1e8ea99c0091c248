import type { Change } from "../../../domain/change.ts";
import { id } from "../../../domain/ids.ts";
import type { Problem } from "../../../domain/problem.ts";
import { isProblem } from "../../../domain/problem.ts";
import { checkWords } from "../../../domain/proposals/check-words.ts";
import { draftOfClaim } from "../../../domain/proposals/form/claim-of-fields.ts";
import { type FormFields, listIn, saidIn } from "../../../domain/proposals/form/form-fields.ts";
import type { ProposalKind } from "../../../domain/proposals/proposal.ts";
import { type Acting, refuseCaller } from "../../acting.ts";
import { unfitOf } from "../../unfit-of.ts";
import type { FindNamed } from "../say-edit.ts";
import { type ProposedEdit, sayChange } from "../say-proposal.ts";
import { changeOfForm, type FormPorts, isChange } from "./change-of-form.ts";
import { alikeClaims, alikeTerms, findAlike } from "./find-alike.ts";
import { type FoundAlike, sayAlike } from "./say-alike.ts";

/** A form as it would be proposed. */
export interface LookedOver {
  /** What would be proposed; none while something is lacking or wrong. */
  readonly change?: Change;
  /** The first edits in words. */
  readonly edits: readonly ProposedEdit[];
  /** What is lacking or wrong, each at its field. */
  readonly problems: readonly Problem[];
  /** What stands already and may be the same. */
  readonly alike: readonly FoundAlike[];
}

/** Edits that are put in words. */
const EDITS_IN_WORDS = 20;

/** Reads a form back: what it says in words, what it lacks, what stands already. Nothing is kept. */
export async function lookOver(
  ports: FormPorts & Acting,
  kind: ProposalKind,
  fields: FormFields | Problem,
  find: FindNamed,
): Promise<LookedOver> {
  const refusal = refuseCaller(ports, "make a proposal");
  if (refusal) return { edits: [], problems: refusal.refused, alike: [] };
  if (isProblem(fields)) return { edits: [], problems: [fields], alike: [] };
  const { store } = ports;
  const asked = await changeOfForm(ports, kind, fields);
  if (!isChange(asked))
    return {
      edits: [],
      problems: asked,
      alike: await sayAlike(ports, await alikeSoFar(ports, kind, fields), find),
    };
  const unfit = checkWords({ change: asked })[0] ?? (await unfitOf(store, asked));
  return {
    ...(unfit ? {} : { change: asked }),
    edits: await sayChange(ports, asked, find, EDITS_IN_WORDS),
    problems: unfit ? [unfit] : [],
    alike: await sayAlike(ports, await findAlike(store, asked), find),
  };
}

/** What may be the same as something that is not said to its end. */
async function alikeSoFar({ store }: FormPorts, kind: ProposalKind, fields: FormFields) {
  if (kind === "claim" || kind === "exception") {
    const said = kind === "exception" ? { ...fields, relation: "void when" } : fields;
    return saidIn(said, "relation") ? alikeClaims(store, draftOfClaim(said, "claim.unnamed")) : [];
  }
  const label = saidIn(fields, "label");
  if (kind !== "term" || label === undefined) return [];
  return alikeTerms(store, { id: id("term.unnamed"), label, otherLabels: listIn(fields, "other-labels") });
}
