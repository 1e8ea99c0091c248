import { id, type TermId } from "../../domain/ids.ts";
import type { ReportReader } from "./report-reader.ts";

const EARLIEST = /^earliestAnywhere\((.+)\)$/;

/** The term of an `earliestAnywhere(term)` assumption. */
export function assumedTerm(assumption: string): TermId | undefined {
  const term = EARLIEST.exec(assumption)?.[1];
  return term === undefined ? undefined : id<"term">(term);
}

/** An assumption of the engine as a sentence that says that it is one. */
export function assumptionInWords(assumption: string, reader: ReportReader): string {
  const term = assumedTerm(assumption);
  if (term === undefined) return `Assumed: ${assumption}.`;
  return `Assumed, since no source dates ${reader.labelOf(term)} here: none anywhere was earlier than the earliest source in this graph.`;
}
