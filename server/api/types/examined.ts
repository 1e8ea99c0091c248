import { canonicalJson } from "../../domain/canonical-json.ts";
import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";

/** The answer of the engine: the report, its words, and what they name. */
export function addExamined(b: Builder) {
  b.scalarType("Report", {
    description:
      "The report of the engine as one JSON value with its members in canonical order; docs/formats/report.schema.json says what is in it.",
    serialize: (report) => JSON.parse(canonicalJson(report)),
    parseValue: () => {
      throw new TypeError("A report is only given out.");
    },
  });
  b.objectType("Examined", {
    fields: (t) => ({
      revision: t.int({ resolve: ({ report }) => report.revision }),
      report: t.expose("report", { type: "Report" }),
      words: t.expose("words", { type: "ReportWords" }),
      terms: t.field({
        extensions: { entries: 100 },
        description: "Every term the report names.",
        type: ["Term"],
        resolve: ({ terms, report }) => terms.map((term) => asOf(term, report.revision)),
      }),
      claims: t.field({
        extensions: { entries: 100 },
        description: "Every claim the report names.",
        type: ["Claim"],
        resolve: ({ claims, report }) => claims.map((claim) => asOf(claim, report.revision)),
      }),
    }),
  });
}
