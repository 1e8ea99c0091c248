import { canonicalJson } from "../../domain/canonical-json.ts";
import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";

/** What the probabilities say of a piece, and what that names. */
export function addWeighed(b: Builder) {
  b.scalarType("Weighing", {
    description:
      "The weighing of the engine as one JSON value with its members in canonical order; docs/formats/weighing.schema.json says what is in it.",
    serialize: (weighing) => JSON.parse(canonicalJson(weighing)),
    parseValue: () => {
      throw new TypeError("A weighing is only given out.");
    },
  });
  b.scalarType("WeighingWords", {
    description: "A weighing in sentences, as one JSON value.",
    serialize: (words) => words,
    parseValue: () => {
      throw new TypeError("Words are only given out.");
    },
  });
  b.objectType("Weighed", {
    fields: (t) => ({
      revision: t.int({ resolve: ({ weighing }) => weighing.revision }),
      weighing: t.expose("weighing", { type: "Weighing" }),
      words: t.expose("words", { type: "WeighingWords" }),
      terms: t.field({
        extensions: { entries: 100 },
        description: "Every term the weighing names.",
        type: ["Term"],
        resolve: ({ terms, weighing }) => terms.map((term) => asOf(term, weighing.revision)),
      }),
      claims: t.field({
        extensions: { entries: 100 },
        description: "Every claim the weighing names.",
        type: ["Claim"],
        resolve: ({ claims, weighing }) => claims.map((claim) => asOf(claim, weighing.revision)),
      }),
    }),
  });
}
