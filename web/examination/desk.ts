import { createContext, useContext } from "react";
import type { ObservationId, PartId, TermId } from "#server/domain/ids.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { Glossary } from "#web/strips/glossary.ts";
import type { ProblemFieldsFragment } from "./Examination.graphql.ts";
import type { ExaminationDesk } from "./use-examination.ts";

/** What every part of the page works on. */
export interface Desk extends ExaminationDesk {
  readonly glossary: Glossary;
  /** Learns the name of a term that was just picked, before the server names it. */
  readonly learn: (term: TermId, label: string) => void;
  /** The newest answer; undefined where the stored piece could not be examined. */
  readonly report: Report | undefined;
  readonly words: ReportWords | undefined;
  /** What the server refused of the piece as shown. */
  readonly problems: readonly ProblemFieldsFragment[];
  readonly chosenPart: PartId | undefined;
  readonly choosePart: (part: PartId | undefined) => void;
  /** The observation whose fields are open. */
  readonly editing: ObservationId | undefined;
  readonly editObservation: (observation: ObservationId | undefined) => void;
}

const DeskContext = createContext<Desk | undefined>(undefined);
export const DeskProvider = DeskContext.Provider;

/** The desk of the examination that the component stands in. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error("useDesk is called outside an examination");
  return desk;
}
