import { type ClaimId, type ExaminationId, id, type SourceId, type TermId } from "../domain/ids.ts";
import { findExamination } from "../use-cases/ask/find-examination.ts";
import type { Context } from "./context.ts";

/** Anything by its id, whose first word says what it is. */
export function findNode(context: Context, name: string) {
  const [first] = name.split(".");
  if (first === "claim") return context.load.claims.one(id(name) satisfies ClaimId, undefined);
  if (first === "source") return context.load.sources.one(id(name) satisfies SourceId, undefined);
  if (first === "examination") return findExamination(context, id(name) satisfies ExaminationId);
  return context.load.terms.one(id(name) satisfies TermId, undefined);
}
