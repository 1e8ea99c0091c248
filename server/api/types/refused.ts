import type { Builder } from "../builder.ts";

/** What a change or a question gives: its answer, or why it was refused. */
export function addRefused(b: Builder) {
  b.objectType("Problem", {
    fields: (t) => ({
      code: t.expose("code", { type: b.enums.problemCode }),
      message: t.exposeString("message", {
        description: "One sentence that says what is wrong, where, and what to do.",
      }),
      path: t.stringList({
        description: "Place in the input, e.g. parts, 3, within.",
        resolve: (problem) => problem.path.map(String),
      }),
      instead: t.exposeString("instead", { description: "What the input might have meant.", nullable: true }),
    }),
  });
  b.objectType("Refused", {
    description: "Nothing was changed.",
    fields: (t) => ({
      problems: t.field({ type: ["Problem"], resolve: (refusal) => refusal.refused }),
      current: t.field({
        description: "Where somebody else changed the examination meanwhile: how it stands now.",
        type: "Examination",
        nullable: true,
        resolve: (refusal) => refusal.current,
      }),
    }),
  });
  b.objectType("ExaminationChanged", {
    fields: (t) => ({ examination: t.expose("examination", { type: "Examination" }) }),
  });
}
