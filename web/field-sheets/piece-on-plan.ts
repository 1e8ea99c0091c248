import type { PieceInput, Seen } from "../shared/apollo/schema-types.graphql.ts";
import type { OnPlanFragment } from "./PlanOfPiece.graphql.ts";

export type PieceOnPlan = OnPlanFragment["piece"];
type Part = PieceOnPlan["parts"][number];
type Observation = PieceOnPlan["observations"][number];

/** The parts of a piece that are of a kind, or of a narrower one. */
export const partsOfKind = ({ parts }: PieceOnPlan, kind: string): readonly Part[] =>
  parts.filter(
    (part) => part.kind?.id === kind || part.kind?.broaderTerms.some((broader) => broader.id === kind),
  );

/** What was recorded of a feature on a part. */
export const madeOn = (
  { observations }: PieceOnPlan,
  part: string,
  feature: string,
): Observation | undefined => observations.find((made) => made.part === part && made.feature.id === feature);

/** The piece with a thing recorded on a part, or, with null, without it. What was said of it beside stays. */
export function withRecorded(
  piece: PieceOnPlan,
  { part, feature }: { readonly part: string; readonly feature: string },
  seen: Seen | null,
): PieceInput {
  const input = inputFrom(piece);
  const before = madeOn(piece, part, feature);
  if (seen === null)
    return { ...input, observations: (input.observations ?? []).filter(({ id }) => id !== before?.id) };
  if (before !== undefined)
    return {
      ...input,
      observations: (input.observations ?? []).map((made) =>
        made.id === before.id ? { ...made, seen } : made,
      ),
    };
  const id = freeId(`${part}.${feature.replace(/^[a-z]+\./, "")}`.slice(0, 100), piece);
  return {
    ...input,
    observations: [...(input.observations ?? []), { id, part, feature, seen, sureness: "SURE" }],
  };
}

function freeId(stem: string, { observations }: PieceOnPlan): string {
  const taken = new Set(observations.map(({ id }) => id));
  let id = stem;
  for (let count = 2; taken.has(id); count++) id = `${stem}-${count}`;
  return id;
}

const idOf = (term: { readonly id: string } | null): string | null => term?.id ?? null;

/** The piece as the server takes it. */
function inputFrom({ attribution, parts, observations, odds, ...piece }: PieceOnPlan): PieceInput {
  return {
    ...{ title: piece.title, invented: piece.invented, note: piece.note, examined: piece.examined },
    attribution: {
      date: attribution.date,
      region: idOf(attribution.region),
      form: idOf(attribution.form),
      style: idOf(attribution.style),
      maker: idOf(attribution.maker),
    },
    parts: parts.map(({ id, label, kind, within, region }) => ({
      ...{ id, label, kind: idOf(kind), within, region: idOf(region) },
    })),
    observations: observations.map(({ id, part, feature, seen, sureness, note }) => ({
      ...{ id, part, feature: feature.id, seen, sureness, note },
    })),
    ...{ together: piece.together, separate: piece.separate },
    odds: odds && {
      datePrior: odds.datePrior,
      parts:
        odds.parts?.map(({ part, original, later, reused }) => ({ part, original, later, reused })) ?? null,
      ...{ wrongClaims: odds.wrongClaims, leak: odds.leak, madeToDeceive: odds.madeToDeceive },
    },
  };
}
