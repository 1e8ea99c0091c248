import type { TermId } from "../../domain/ids.ts";
import type { ChosenOdds } from "../../domain/weighing/chosen-odds.ts";
import type { Builder } from "../builder.ts";
import type { Context } from "../context.ts";
import { termOrItsId } from "../term-or-its-id.ts";

const optionalTerm = (term: TermId | undefined, context: Context) =>
  term === undefined ? null : termOrItsId(context, term);

/** Everything recorded of one piece. */
export function addPiece(b: Builder) {
  b.objectType("Attribution", {
    description: "What is claimed of the piece; what is not stated is unknown.",
    fields: (t) => ({
      date: t.exposeString("date", { description: "EDTF, read as one event." }),
      region: t.field({ type: "Term", nullable: true, resolve: (a, _, ctx) => optionalTerm(a.region, ctx) }),
      form: t.field({ type: "Term", nullable: true, resolve: (a, _, ctx) => optionalTerm(a.form, ctx) }),
      style: t.field({ type: "Term", nullable: true, resolve: (a, _, ctx) => optionalTerm(a.style, ctx) }),
      maker: t.field({ type: "Term", nullable: true, resolve: (a, _, ctx) => optionalTerm(a.maker, ctx) }),
    }),
  });
  b.objectType("Part", {
    fields: (t) => ({
      id: t.exposeID("id"),
      label: t.exposeString("label"),
      kind: t.field({ type: "Term", nullable: true, resolve: (p, _, ctx) => optionalTerm(p.kind, ctx) }),
      within: t.exposeID("within", { description: "The part it belongs to.", nullable: true }),
      region: t.field({
        description: "Only where the part is known to be from elsewhere.",
        type: "Term",
        nullable: true,
        resolve: (p, _, ctx) => optionalTerm(p.region, ctx),
      }),
    }),
  });
  b.objectType("Observation", {
    description: "A feature on a part of this piece.",
    fields: (t) => ({
      id: t.exposeID("id"),
      part: t.exposeID("part"),
      feature: t.field({ type: "Term", resolve: (o, _, ctx) => termOrItsId(ctx, o.feature) }),
      seen: t.expose("seen", { type: b.enums.seen }),
      sureness: t.expose("sureness", { type: b.enums.sureness }),
      note: t.exposeString("note", { nullable: true }),
    }),
  });
  const partOdds = b.objectRef<NonNullable<ChosenOdds["parts"]>[number]>("PartOdds").implement({
    fields: (t) => ({
      part: t.exposeID("part"),
      original: t.exposeFloat("original"),
      later: t.exposeFloat("later"),
      reused: t.exposeFloat("reused"),
    }),
  });
  const odds = b.objectRef<ChosenOdds>("ChosenOdds").implement({
    description: "What the examiner assumes of this piece in place of the usual odds.",
    fields: (t) => ({
      datePrior: t.expose("datePrior", { type: b.enums.datePrior, nullable: true }),
      parts: t.field({ type: [partOdds], resolve: ({ parts }) => parts ?? [] }),
      wrongClaims: t.exposeFloat("wrongClaims", { nullable: true }),
      leak: t.exposeFloat("leak", { nullable: true }),
      madeToDeceive: t.exposeFloat("madeToDeceive", { nullable: true }),
    }),
  });
  b.objectType("Piece", {
    fields: (t) => ({
      title: t.exposeString("title"),
      invented: t.exposeBoolean("invented", {
        description: "True for demonstration pieces: no such object exists.",
      }),
      note: t.exposeString("note", { nullable: true }),
      examined: t.exposeInt("examined", {
        description: "Year in which the piece was looked at: nothing on it can be later.",
      }),
      attribution: t.expose("attribution", { type: "Attribution" }),
      parts: t.expose("parts", { type: ["Part"] }),
      observations: t.expose("observations", { type: ["Observation"] }),
      together: t.expose("together", {
        description: "Parts that cannot be of different origin.",
        type: t.listRef(t.listRef("ID")),
      }),
      separate: t.expose("separate", {
        description: "Pairs of parts that cannot share an origin.",
        type: t.listRef(t.listRef("ID")),
      }),
      odds: t.field({ type: odds, nullable: true, resolve: (piece) => piece.odds ?? null }),
    }),
  });
}
