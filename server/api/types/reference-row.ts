import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";

/** A row of a reference table. */
export const addReferenceRow = (b: Builder) =>
  b.objectType("ReferenceRow", {
    description:
      "A measured or counted value that bounds no date. It is a number, a range with both ends, or words where it cannot be put as either.",
    fields: (t) => {
      const scoped = (dimension: "region" | "form" | "part") =>
        t.field({
          type: "Term",
          nullable: true,
          resolve: (row, _, { load }) => {
            const term = row.scope?.[dimension];
            return term ? load.terms.one(term, row.at) : null;
          },
        });
      return {
        id: t.exposeID("id"),
        table: t.exposeString("table"),
        quantity: t.exposeString("quantity", { description: "What was measured, in words." }),
        number: t.float({
          nullable: true,
          resolve: (row) => ("value" in row && typeof row.value === "number" ? row.value : null),
        }),
        from: t.float({ nullable: true, resolve: (row) => ("from" in row ? row.from : null) }),
        to: t.float({ nullable: true, resolve: (row) => ("to" in row ? row.to : null) }),
        words: t.string({
          description: "A formula, a month, a letter.",
          nullable: true,
          resolve: (row) => ("value" in row && typeof row.value === "string" ? row.value : null),
        }),
        unit: t.exposeString("unit", { nullable: true }),
        strength: t.expose("strength", { type: b.enums.strength }),
        region: scoped("region"),
        form: scoped("form"),
        part: scoped("part"),
        citations: t.field({
          type: ["Citation"],
          resolve: (row) => row.citations.map((citation) => asOf(citation, row.at)),
        }),
        note: t.exposeString("note", { nullable: true }),
      };
    },
  });
