import { createContext, useContext } from "react";
import type { Piece } from "#server/domain/examination.ts";
import type { ObservationId, PartId, TermId } from "#server/domain/ids.ts";
import type { Report } from "#server/domain/report.ts";
import type { ReportWords } from "#server/domain/report-words.ts";
import type { ProblemFieldsFragment } from "./Examination.graphql.ts";
import type { ExaminationDesk } from "./use-examination.ts";
import type { PageGlossary } from "./use-glossary.ts";

/** Something to be looked for, whose answer is to be recorded. */
export interface Asked {
  readonly part: PartId;
  readonly feature: TermId;
  readonly label: string;
}

/** What can be done on the page, and the names of things: the same object as long as the page is open. */
export interface Deeds {
  readonly edit: ExaminationDesk["edit"];
  /** The piece as it is shown at this moment. */
  readonly shown: () => Piece;
  readonly glossary: PageGlossary;
  /** Learns the name of a term that was just picked, before the server names it. */
  readonly learn: (term: TermId, label: string) => void;
  readonly choosePart: (part: PartId | undefined) => void;
  /** Asks for the answer to something worth looking at: opens the field on its part, or leaves it be. */
  readonly askFor: (asked: Asked | undefined) => void;
  /** Opens the fields of one observation, or closes them. */
  readonly editObservation: (observation: ObservationId | undefined) => void;
}

/** What every part of the page works on; changes with every edit and every answer. */
export interface Desk extends ExaminationDesk {
  /** The newest answer; undefined where the stored piece could not be examined. */
  readonly report: Report | undefined;
  readonly words: ReportWords | undefined;
  /** What the server refused of the piece as shown. */
  readonly problems: readonly ProblemFieldsFragment[];
  readonly chosenPart: PartId | undefined;
  /** The observation whose fields are open. */
  readonly editing: ObservationId | undefined;
  readonly asked: Asked | undefined;
}

const DeedsContext = createContext<Deeds | undefined>(undefined);
const DeskContext = createContext<Desk | undefined>(undefined);
export const DeedsProvider = DeedsContext.Provider;
export const DeskProvider = DeskContext.Provider;

function useGiven<Given>(given: Given | undefined): Given {
  if (given === undefined) throw new Error("This part of the page stands outside an examination");
  return given;
}

/** What can be done; reading it does not draw a component again. */
export const useDeeds = (): Deeds => useGiven(useContext(DeedsContext));
/** The desk of the examination that the component stands in. */
export const useDesk = (): Desk => useGiven(useContext(DeskContext));
