import type { Builder } from "../builder.ts";

/** A numbered state of the whole graph. */
export const addRevision = (b: Builder) =>
  b.objectType("Revision", {
    description: "One accepted change of the graph, chained to the one before by its hash.",
    fields: (t) => ({
      number: t.exposeInt("number"),
      at: t.exposeString("at"),
      by: t.exposeString("by"),
      message: t.exposeString("message"),
      hash: t.exposeString("hash"),
      previous: t.exposeString("previous"),
      edits: t.int({
        description: "How many terms, claims and sources it touched.",
        resolve: async ({ number }, _, { load }) => (await load.editCounts.one(number)) ?? 0,
      }),
    }),
  });
