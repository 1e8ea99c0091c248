import type { Observation, Part, Piece, Seen, Sureness } from "#server/domain/examination.ts";

/** A part in plain strings; a bare string is its id. */
export type PartSketch =
  | string
  | { readonly id: string; readonly kind?: string; readonly within?: string; readonly region?: string };

/** An observation in plain strings: present and sure unless it says otherwise. */
export interface ObservationSketch {
  readonly id: string;
  readonly part: string;
  readonly feature: string;
  readonly seen?: Seen;
  readonly sureness?: Sureness;
}

/** A piece in plain strings. Parts that only an observation names are added. */
export interface PieceSketch {
  readonly date?: string;
  readonly region?: string;
  readonly form?: string;
  readonly style?: string;
  readonly maker?: string;
  readonly examined?: number;
  readonly parts?: readonly PartSketch[];
  readonly observations?: readonly ObservationSketch[];
  readonly together?: readonly (readonly string[])[];
  readonly separate?: readonly (readonly [string, string])[];
}

/** A piece from a sketch: of 1760/1775, looked at in 2026. */
export function aPiece(sketch: PieceSketch = {}): Piece {
  const { date = "1760/1775", region, form, style, maker, examined = 2026 } = sketch;
  const observations = sketch.observations ?? [];
  const stated = (sketch.parts ?? []).map((part) => (typeof part === "string" ? { id: part } : part));
  const named = [...new Set(observations.map(({ part }) => part))].filter(
    (id) => !stated.some((part) => part.id === id),
  );
  const parts = [...stated, ...named.map((id) => ({ id }))];
  return {
    title: "A piece",
    invented: true,
    examined,
    attribution: {
      date,
      ...(region === undefined ? {} : { region }),
      ...(form === undefined ? {} : { form }),
      ...(style === undefined ? {} : { style }),
      ...(maker === undefined ? {} : { maker }),
    } as Piece["attribution"],
    parts: parts.map((part) => ({ label: part.id, ...part }) as unknown as Part),
    observations: observations.map(
      (observation) => ({ seen: "present", sureness: "sure", ...observation }) as unknown as Observation,
    ),
    together: (sketch.together ?? []) as unknown as Piece["together"],
    separate: (sketch.separate ?? []) as unknown as Piece["separate"],
  };
}
