import type { Change } from "../domain/change.ts";
import { isProblem } from "../domain/problem.ts";
import { readFormFields } from "../domain/proposals/form/form-fields.ts";
import type { ProposalKind } from "../domain/proposals/proposal.ts";
import { readChange } from "../formats/read-change.ts";
import type { Said } from "../use-cases/do/change-proposal.ts";
import type { Asked } from "../use-cases/do/make-proposal.ts";
import { isRefusal, type Refusal, refusalFrom } from "../use-cases/refusal.ts";
import type { Context } from "./context.ts";

interface Input {
  readonly kind?: ProposalKind | null | undefined;
  readonly title?: string | null | undefined;
  readonly why?: string | null | undefined;
  readonly change?: unknown;
  readonly base?: number | null | undefined;
  readonly form?: unknown;
}

/** What is said otherwise of a proposal, or why the change cannot be read, place by place. */
export function readSaid({ kind, title, why, change, base, form }: Input): Said | Refusal {
  const read = change === undefined || change === null ? undefined : changeFrom(change);
  if (isRefusal(read)) return read;
  const fields = form === undefined || form === null ? undefined : readFormFields(form);
  if (isProblem(fields)) return { refused: [fields] };
  return {
    ...(kind ? { kind } : {}),
    ...(typeof title === "string" ? { title: title.trim() } : {}),
    ...(typeof why === "string" ? { why: why.trim() } : {}),
    ...(read === undefined ? {} : { change: read }),
    ...(typeof base === "number" ? { base } : {}),
    ...(fields === undefined ? {} : { form: fields }),
  };
}

/** A new proposal, on the newest revision unless another is named. */
export async function readAsked(
  { store }: Pick<Context, "store">,
  input: Input & { readonly kind: ProposalKind; readonly title: string; readonly why: string },
  state: Asked["state"],
): Promise<Asked | Refusal> {
  const said = readSaid(input);
  if (isRefusal(said)) return said;
  const { kind, title, why } = input;
  const base = (await store.newestRevision())?.number ?? 0;
  return { ...{ kind, title, why, base, change: [] }, ...said, state };
}

function changeFrom(value: unknown): Change | Refusal {
  const read = readChange(value);
  const problems = read.filter((one) => "problem" in one);
  const told = problems.map((one) => ({ ...one, path: ["change", ...one.path] }));
  return refusalFrom(told) ?? (read as Change);
}
