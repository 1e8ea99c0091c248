import type { Observation, Piece } from "#server/domain/examination.ts";

/** A piece as its file holds it: docs/formats/piece.schema.json. What has a default may be left out. */
export interface PieceFile {
  readonly title: string;
  readonly invented?: boolean;
  readonly note?: string;
  readonly examined: number;
  readonly attribution: Readonly<Record<string, string>>;
  readonly parts: readonly Readonly<Record<string, string>>[];
  readonly observations?: readonly Readonly<Record<string, string>>[];
  readonly together?: readonly (readonly string[])[];
  readonly separate?: readonly (readonly string[])[];
}

/** The piece of a file that is known to be of its form; the tests of the seed see to that. */
export const readPieceFile = (file: PieceFile): Piece => ({
  title: file.title,
  invented: file.invented ?? false,
  ...(file.note === undefined ? {} : { note: file.note }),
  examined: file.examined,
  attribution: file.attribution as unknown as Piece["attribution"],
  parts: file.parts as unknown as Piece["parts"],
  observations: (file.observations ?? []).map(
    (seen) => ({ sureness: "sure", ...seen }) as unknown as Observation,
  ),
  together: (file.together ?? []) as unknown as Piece["together"],
  separate: (file.separate ?? []) as unknown as Piece["separate"],
});
