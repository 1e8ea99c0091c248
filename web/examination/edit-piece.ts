import type { Attribution, Observation, Part, Piece } from "#server/domain/examination.ts";
import { id, type ObservationId, type PartId, type TermId } from "#server/domain/ids.ts";
import type { ChosenOdds } from "#server/domain/weighing/chosen-odds.ts";

/** Each edit is a pure function from one piece to the next; nothing is changed in place. */
export type Edit = (piece: Piece) => Piece;

/** What a field sets; `undefined` takes the value away. */
export type Patch<Value> = { readonly [K in keyof Value]?: Value[K] | undefined };

function patched<Value extends object>(value: Value, patch: Patch<NoInfer<Value>>): Value {
  const entries = Object.entries({ ...value, ...patch }).filter(([, each]) => each !== undefined);
  return Object.fromEntries(entries) as Value;
}

/** The first of `stem`, `stem-2`, `stem-3` ... that is not taken. */
function freeName(stem: string, taken: ReadonlySet<string>, join: string): string {
  if (!taken.has(stem)) return stem;
  let count = 2;
  while (taken.has(`${stem}${join}${count}`)) count++;
  return `${stem}${join}${count}`;
}

const slug = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{ASCII}]/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 60) || "part";

export const renamePiece =
  (title: string): Edit =>
  (piece) => ({ ...piece, title });

export const changeAttribution =
  (patch: Patch<Attribution>): Edit =>
  (piece) => ({ ...piece, attribution: patched(piece.attribution, patch) });

/** Adds a part of a kind; the label is made different from those there are. */
export const addPart =
  (label: string, kind: TermId | undefined, within?: PartId): Edit =>
  (piece) => {
    const ids = new Set<string>(piece.parts.map((part) => part.id));
    const labels = new Set(piece.parts.map((part) => part.label));
    const name = freeName(label, labels, " ");
    const part: Part = {
      id: id<"part">(freeName(slug(name), ids, "-")),
      label: name,
      ...(kind === undefined ? {} : { kind }),
      ...(within === undefined ? {} : { within }),
    };
    return { ...piece, parts: [...piece.parts, part] };
  };

export const changePart =
  (part: PartId, patch: Patch<Omit<Part, "id">>): Edit =>
  (piece) => ({
    ...piece,
    parts: piece.parts.map((each) => (each.id === part ? patched(each, patch) : each)),
  });

/** Takes a part out with what was seen on it; parts inside it move to where it was. */
export const removePart =
  (part: PartId): Edit =>
  (piece) => {
    const gone = piece.parts.find((each) => each.id === part);
    const left: Piece = {
      ...piece,
      parts: piece.parts
        .filter((each) => each.id !== part)
        .map((each) => (each.within === part ? patched(each, { within: gone?.within }) : each)),
      observations: piece.observations.filter((seen) => seen.part !== part),
      together: piece.together
        .map((group) => group.filter((each) => each !== part))
        .filter((group) => group.length > 1),
      separate: piece.separate.filter((pair) => !pair.includes(part)),
    };
    return piece.odds === undefined ? left : chooseOdds(oddsWithout(piece.odds, part))(left);
  };

function oddsWithout({ parts, ...rest }: ChosenOdds, part: PartId): ChosenOdds {
  const left = parts?.filter((chosen) => chosen.part !== part) ?? [];
  return left.length > 0 ? { ...rest, parts: left } : rest;
}

/** Keeps what is assumed of the piece; nothing chosen is as assumed for every piece. */
export const chooseOdds =
  (odds: ChosenOdds): Edit =>
  ({ odds: _before, ...piece }) =>
    Object.keys(odds).length === 0 ? piece : { ...piece, odds };

export const addObservation =
  (seen: Omit<Observation, "id">): Edit =>
  (piece) => {
    const ids = new Set<string>(piece.observations.map((each) => each.id));
    const stem = `${seen.part}.${seen.feature.replace(/^[a-z]+\./, "")}`.slice(0, 100);
    return {
      ...piece,
      observations: [...piece.observations, { ...seen, id: id<"observation">(freeName(stem, ids, "-")) }],
    };
  };

export const changeObservation =
  (observation: ObservationId, patch: Patch<Omit<Observation, "id">>): Edit =>
  (piece) => ({
    ...piece,
    observations: piece.observations.map((each) => (each.id === observation ? patched(each, patch) : each)),
  });

export const removeObservation =
  (observation: ObservationId): Edit =>
  (piece) => ({ ...piece, observations: piece.observations.filter((each) => each.id !== observation) });

/** Says that two parts cannot be of different origin, or that they cannot share one; takes back the other. */
export const joinParts =
  (a: PartId, b: PartId, how: "together" | "separate"): Edit =>
  (piece) => {
    const cleared = partParts(a, b)(piece);
    return how === "together"
      ? { ...cleared, together: [...cleared.together, [a, b]] }
      : { ...cleared, separate: [...cleared.separate, [a, b]] };
  };

/** Takes back what was said of two parts; a larger group keeps its other parts. */
export const partParts =
  (a: PartId, b: PartId): Edit =>
  (piece) => {
    const hasBoth = (group: readonly PartId[]) => group.includes(a) && group.includes(b);
    return {
      ...piece,
      together: piece.together
        .map((group) => (hasBoth(group) ? group.filter((part) => part !== b) : group))
        .filter((group) => group.length > 1),
      separate: piece.separate.filter((pair) => !hasBoth(pair)),
    };
  };
