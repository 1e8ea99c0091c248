import type { Builder } from "../builder.ts";

/** The piece as input; it becomes a `Piece` in piece-from-input.ts. */
export function addPieceInput(b: Builder) {
  const attribution = b.inputType("AttributionInput", {
    fields: (t) => ({
      date: t.string({ required: true, description: "EDTF, read as one event." }),
      region: t.id(),
      form: t.id(),
      style: t.id(),
      maker: t.id(),
    }),
  });
  const part = b.inputType("PartInput", {
    fields: (t) => ({
      id: t.id({ required: true }),
      label: t.string({ required: true }),
      kind: t.id({ description: "A term of kind `part`." }),
      within: t.id({ description: "Id of the part it belongs to." }),
      region: t.id({ description: "Only where the part is known to be from elsewhere." }),
    }),
  });
  const observation = b.inputType("ObservationInput", {
    fields: (t) => ({
      id: t.id({ required: true }),
      part: t.id({ required: true }),
      feature: t.id({ required: true, description: "A term of kind `feature`." }),
      seen: t.field({ type: b.enums.seen, required: true }),
      sureness: t.field({ type: b.enums.sureness, required: true, defaultValue: "sure" }),
      note: t.string(),
    }),
  });
  const partOdds = b.inputType("PartOddsInput", {
    description: "Odds of three states of a part; they add up to 1.",
    fields: (t) => ({
      part: t.id({ required: true }),
      original: t.float({ required: true }),
      later: t.float({ required: true }),
      reused: t.float({ required: true }),
    }),
  });
  const odds = b.inputType("ChosenOddsInput", {
    description: "What the examiner assumes of this piece in place of the usual odds.",
    fields: (t) => ({
      datePrior: t.field({ type: b.enums.datePrior }),
      parts: t.field({ type: [partOdds] }),
      wrongClaims: t.float({ description: "Times the probability that claims are wrong." }),
      leak: t.float({ description: "Probability outside all known years." }),
      madeToDeceive: t.float({ description: "Prior of “made later to look old”." }),
    }),
  });
  const lists = { required: true, defaultValue: [] as string[][] } as const;
  return b.inputType("PieceInput", {
    fields: (t) => ({
      title: t.string({ required: true }),
      invented: t.boolean({ required: true, defaultValue: false }),
      note: t.string(),
      examined: t.int({ required: true, description: "Year in which the piece was looked at." }),
      attribution: t.field({ type: attribution, required: true }),
      parts: t.field({ type: [part], required: true }),
      observations: t.field({ type: [observation], required: true }),
      together: t.field({
        description: "Parts that cannot be of different origin.",
        type: t.listRef(t.listRef("ID")),
        ...lists,
      }),
      separate: t.field({
        description: "Pairs of parts that cannot share an origin.",
        type: t.listRef(t.listRef("ID")),
        ...lists,
      }),
      odds: t.field({ type: odds }),
    }),
  });
}
export type PieceInputRef = ReturnType<typeof addPieceInput>;
