import type { GraphQLSchema } from "graphql";
import { createBuilder } from "./builder.ts";
import { addAround } from "./types/around.ts";
import { addClaim } from "./types/claim.ts";
import { addDisagreement } from "./types/disagreement.ts";
import { addExamination } from "./types/examination.ts";
import { addExamined } from "./types/examined.ts";
import { addFieldSheet } from "./types/field-sheet.ts";
import { addHistory } from "./types/history.ts";
import { addLeaning } from "./types/leaning.ts";
import { addMutation } from "./types/mutation.ts";
import { addNode } from "./types/node.ts";
import { addPiece } from "./types/piece.ts";
import { addPieceInput } from "./types/piece-input.ts";
import { addQuery } from "./types/query.ts";
import { addReferenceRow } from "./types/reference-row.ts";
import { addRefused } from "./types/refused.ts";
import { addRegion } from "./types/region.ts";
import { addReportWords } from "./types/report-words.ts";
import { addRevision } from "./types/revision.ts";
import { addSource } from "./types/source.ts";
import { addTerm } from "./types/term.ts";

/** The whole schema; schema.graphql is its print. */
export function buildSchema(): GraphQLSchema {
  const b = createBuilder();
  addNode(b);
  addTerm(b);
  addClaim(b);
  addAround(b);
  addSource(b);
  addReferenceRow(b);
  addRevision(b);
  addHistory(b);
  addLeaning(b);
  addDisagreement(b);
  addPiece(b);
  addExamination(b);
  addExamined(b);
  addReportWords(b);
  addRefused(b);
  const pieceInput = addPieceInput(b);
  const regionTypes = addRegion(b);
  addQuery(b, pieceInput, regionTypes);
  addFieldSheet(b);
  addMutation(b, pieceInput);
  return b.toSchema();
}
