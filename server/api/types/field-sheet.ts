import { GraphQLError } from "graphql";
import { id } from "../../domain/ids.ts";
import { POSITIONS } from "../../domain/position.ts";
import {
  drawUpFieldSheet,
  type FieldSheet,
  type SheetEntry,
} from "../../use-cases/ask/draw-up-field-sheet.ts";
import { isRefusal } from "../../use-cases/refusal.ts";
import { type AsOf, asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { FIELD_SHEET_WEIGHT } from "../limits/operation-cost.ts";

/** Most features told of one part, and how many if nobody says. */
const MOST_EACH = 8;
const USUAL_EACH = 5;
/** Entries that the lists are taken to have, for the cost. */
const ENTRIES = { parts: 25, sections: 40, entries: USUAL_EACH, again: 4, claims: 3 };
/** What a feature can tell, each once: a missing one does not compile. */
const TELLS = Object.keys({
  bound: true,
  sign: true,
  habit: true,
  typical: true,
  record: true,
} satisfies Record<SheetEntry["tells"], true>) as SheetEntry["tells"][];

const valuesOf = <Value extends string>(values: readonly Value[]) =>
  Object.fromEntries(values.map((value) => [value.toUpperCase().replaceAll(" ", "_"), { value }])) as Record<
    string,
    { value: Value }
  >;

/** The sheet of a form to take to a piece. Gives back what other plans of a look share with it. */
export function addFieldSheet(b: Builder) {
  const position = b.enumType("Position", {
    description: "Where one stands or what one has opened, in the order in which one goes round a piece.",
    values: valuesOf(POSITIONS),
  });
  const tells = b.enumType("Tells", {
    description:
      "What seeing a feature comes to: years it cannot be outside of, a state of the part, usual years, what it is typical of, a record.",
    values: valuesOf(TELLS),
  });
  const entry = b.objectRef<AsOf<SheetEntry>>("SheetEntry").implement({
    description: "A feature to look for.",
    fields: (t) => ({
      feature: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ feature, at }, _, { load }) => load.terms.one(feature, at),
      }),
      tells: t.expose("tells", { type: tells }),
      means: t.exposeString("means", { description: "What it would mean to see it." }),
      bases: t.field({ type: [b.enums.basis], resolve: ({ bases }) => bases }),
      claims: t.field({
        extensions: { entries: ENTRIES.claims },
        type: ["Claim"],
        resolve: ({ claims, at }, _, { load }) => load.claims.many(claims, at),
      }),
    }),
  });
  const section = b.objectRef<AsOf<FieldSheet["sections"][number]>>("SheetSection").implement({
    description: "What to look for on one part from one position.",
    fields: (t) => ({
      position: t.expose("position", { type: position }),
      part: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ part, at }, _, { load }) => load.terms.one(part, at),
      }),
      entries: t.field({
        description: "The most telling first.",
        extensions: { entries: ENTRIES.entries },
        type: [entry],
        resolve: ({ entries, at }) => entries.map((each) => asOf(each, at)),
      }),
      again: t.field({
        description: "Told in full on a part before, and looked for here too.",
        extensions: { entries: ENTRIES.again },
        type: ["Term"],
        resolve: ({ again, at }, _, { load }) => load.terms.many(again, at),
      }),
      more: t.exposeInt("more", {
        description: "What else would tell something on this part; counted at its last section.",
      }),
    }),
  });
  const sheet = b.objectRef<FieldSheet>("FieldSheet").implement({
    description: "What to look for on a piece of one form, in the order in which one goes round it.",
    fields: (t) => ({
      revision: t.exposeInt("revision"),
      form: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ ask, revision }, _, { load }) => load.terms.one(ask.form, revision),
      }),
      region: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ ask, revision }, _, { load }) =>
          ask.region === undefined ? null : load.terms.one(ask.region, revision),
      }),
      date: t.string({ nullable: true, resolve: ({ ask }) => ask.date }),
      parts: t.field({
        description: "The parts that the form is expected to have.",
        extensions: { entries: ENTRIES.parts },
        type: ["Term"],
        resolve: ({ parts, revision }, _, { load }) => load.terms.many(parts, revision),
      }),
      isCut: t.exposeBoolean("isCut", {
        description: "More features are looked for on its parts, too many to weigh.",
      }),
      sections: t.field({
        extensions: { entries: ENTRIES.sections },
        type: [section],
        resolve: ({ sections, revision }) => sections.map((each) => asOf(each, revision)),
      }),
    }),
  });
  const result = b.unionType("FieldSheetResult", {
    types: [sheet, "Refused"],
    resolveType: (found) => (isRefusal(found) ? "Refused" : sheet),
  });
  b.queryField("fieldSheet", (t) =>
    t.field({
      description: "The field sheet of a form, for a region and a claimed date where they are known.",
      extensions: { weight: FIELD_SHEET_WEIGHT },
      type: result,
      args: {
        form: t.arg.id({ required: true }),
        region: t.arg.id(),
        date: t.arg.string({ description: "EDTF, read as one event." }),
        each: t.arg.int({
          required: true,
          defaultValue: USUAL_EACH,
          description: `Features told in full of one part, 1 to ${MOST_EACH}.`,
        }),
        revision: t.arg.int({ description: "Number of a revision; none is the newest." }),
      },
      resolve: (_, { form, region, date, each, revision }, context) => {
        if (each < 1 || each > MOST_EACH)
          throw new GraphQLError(`"each" has to be from 1 to ${MOST_EACH}.`, {
            extensions: { code: "BAD_USER_INPUT" },
          });
        const ask = {
          ...{ form: id<"term">(form), each },
          ...(region ? { region: id<"term">(region) } : {}),
          ...(date ? { date } : {}),
        };
        return drawUpFieldSheet(context, ask, revision ?? undefined);
      },
    }),
  );
  return { position };
}
