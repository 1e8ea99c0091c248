import type { Builder } from "../builder.ts";

/** A report in sentences a colleague would say. */
export function addReportWords(b: Builder) {
  b.objectType("StepInWords", {
    description: "One step of a chain; `depth` indents it below what it supports.",
    fields: (t) => ({
      depth: t.exposeInt("depth"),
      says: t.exposeString("says"),
      claim: t.exposeID("claim", { description: "What to cite beside it.", nullable: true }),
      assumed: t.exposeBoolean("assumed", {
        description: "An assumption of the engine rather than a claim.",
      }),
    }),
  });
  b.objectType("FindingInWords", {
    fields: (t) => ({
      id: t.exposeID("id"),
      says: t.exposeString("says"),
      short: t.exposeString("short", { description: "A few words for the end of a strip." }),
      steps: t.expose("steps", { type: ["StepInWords"] }),
      paths: t.exposeStringList("paths"),
    }),
  });
  b.objectType("RuleOutInWords", {
    fields: (t) => ({
      id: t.exposeID("id"),
      says: t.exposeString("says"),
      steps: t.expose("steps", { type: ["StepInWords"] }),
    }),
  });
  b.objectType("SignInWords", {
    fields: (t) => ({
      observation: t.exposeID("observation"),
      claim: t.exposeID("claim"),
      says: t.exposeString("says"),
      because: t.exposeStringList("because", {
        description: "Why it is set aside, or what would set it aside.",
      }),
      look: t.exposeStringList("look"),
    }),
  });
  b.objectType("PartInWords", {
    fields: (t) => ({ part: t.exposeID("part"), says: t.exposeString("says") }),
  });
  b.objectType("ReportWords", {
    fields: (t) => ({
      headline: t.exposeString("headline"),
      reasons: t.exposeStringList("reasons", { description: "At most three." }),
      findings: t.expose("findings", { type: ["FindingInWords"] }),
      ruleOuts: t.expose("ruleOuts", { type: ["RuleOutInWords"] }),
      signs: t.expose("signs", { type: ["SignInWords"] }),
      parts: t.expose("parts", { type: ["PartInWords"] }),
      gaps: t.exposeStringList("gaps"),
      notSearched: t.exposeStringList("notSearched"),
    }),
  });
}
