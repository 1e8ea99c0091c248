import type { Change, Edit } from "../../../domain/change.ts";
import type { Claim } from "../../../domain/claim.ts";
import { id } from "../../../domain/ids.ts";
import { isSame } from "../../../domain/is-same.ts";
import { isProblem, type Problem, problem } from "../../../domain/problem.ts";
import { type FormFields, saidIn } from "../../../domain/proposals/form/form-fields.ts";
import { sourceOfFields } from "../../../domain/proposals/form/source-of-fields.ts";
import { termOfFields } from "../../../domain/proposals/form/term-of-fields.ts";
import { mergeTerms } from "../../../domain/proposals/merge-terms.ts";
import type { ProposalKind } from "../../../domain/proposals/proposal.ts";
import type { Source } from "../../../domain/source.ts";
import type { NewSuffix } from "../../../ports/ids.ts";
import type { Store } from "../../../ports/store.ts";
import { claimOfForm, newSource, nothingDiffers } from "./claim-of-form.ts";
import { findStanding } from "./find-standing.ts";
import { freeTermId, newClaimId } from "./free-id.ts";
import { namersOfTerm } from "./namers-of-term.ts";

export interface FormPorts {
  readonly store: Store;
  readonly newSuffix: NewSuffix;
}
/** The change that a form asks for, or everything that it still lacks, each at its field. */
type Asked = Change | readonly Problem[];

export const isChange = (asked: Asked): asked is Change => asked.every((one) => "kind" in one);

/** Puts what stands in a form as a change of the newest revision. */
export async function changeOfForm(ports: FormPorts, kind: ProposalKind, fields: FormFields): Promise<Asked> {
  switch (kind) {
    case "claim":
      return claimChange(ports, fields);
    case "exception":
      return claimChange(ports, { ...fields, relation: "void when" });
    case "term": {
      const termId = await freeTermId(
        ports.store,
        saidIn(fields, "kind") ?? "",
        saidIn(fields, "label") ?? "",
      );
      const made = termOfFields(fields, termId);
      return "id" in made ? [{ kind: "term", after: made }] : made;
    }
    case "source": {
      const made = await newSource(ports.store, fields, new Set());
      return "id" in made ? [{ kind: "source", after: made }] : made;
    }
    case "merge":
      return mergeChange(ports, fields);
    default:
      return changeOfStanding(ports, kind, fields);
  }
}

/** A new claim, with the sources that are new as well. `sources` are new ones of the same change, by what they are called. */
export const claimChange = (
  ports: FormPorts,
  fields: FormFields,
  sources: Map<string, Source> = new Map(),
): Promise<Asked> => {
  const named = ["subject", "of", "relation", "condition", "object", "region"];
  const claimId = newClaimId(
    named.map((name) => saidIn(fields, name)),
    ports.newSuffix(),
  );
  return claimOfForm(ports.store, fields, claimId, sources);
};

/** Another reading of something that stands, or its end. */
async function changeOfStanding(
  { store }: FormPorts,
  kind: "correction" | "retirement",
  fields: FormFields,
): Promise<Asked> {
  const about = saidIn(fields, "about");
  const standing = about === undefined ? undefined : await findStanding(store, about);
  if (standing === undefined)
    return [
      problem(
        "WRONG_FORMAT",
        `There is nothing here that is called ${about ?? "that"}; choose a term, claim or source.`,
        ["about"],
      ),
    ];
  const before = standing.thing;
  const own = Object.fromEntries(
    Object.entries(fields).filter(([name]) => name !== "about" && name !== "reason"),
  );
  if (kind === "retirement") {
    const reason = saidIn(fields, "reason");
    if (reason === undefined)
      return [problem("EMPTY_LIST", "Say why it should not stand any more.", ["reason"])];
    return [
      standing.kind === "claim"
        ? rejected(standing.thing, reason)
        : ({ kind: standing.kind, before } as Edit),
    ];
  }
  if (standing.kind === "claim") return claimOfForm(store, own, before.id, new Map(), standing.thing);
  const after =
    standing.kind === "term"
      ? termOfFields(own, before.id, standing.thing)
      : sourceOfFields(own, before.id, standing.thing);
  if (!("id" in after)) return after;
  if (isSame(after, before)) return [nothingDiffers];
  return [{ kind: standing.kind, before, after } as Edit];
}

/** A claim that is retired stays to be read, with the reason, and counts for nothing. */
const rejected = (claim: Claim, reason: string): Edit => ({
  kind: "claim",
  before: claim,
  after: { ...claim, status: "rejected", note: [...(claim.note ? [claim.note] : []), reason].join(" ") },
});

async function mergeChange({ store }: FormPorts, fields: FormFields): Promise<Asked> {
  const [about, into] = ["about", "into"].map((name) => id<"term">(saidIn(fields, name) ?? ""));
  const terms = await store.terms([about, into].filter((one) => one !== undefined));
  const [merged, kept] = [about, into].map((one) => (one === undefined ? undefined : terms.get(one)));
  const missing = [
    ...(merged ? [] : [problem("UNKNOWN_TERM", "Choose the term that should go.", ["about"])]),
    ...(kept ? [] : [problem("UNKNOWN_TERM", "Choose the term that should stand for both.", ["into"])]),
  ];
  if (!merged || !kept) return missing;
  const change = mergeTerms(kept, merged, await namersOfTerm(store, merged.id));
  return isProblem(change) ? [change] : change;
}
