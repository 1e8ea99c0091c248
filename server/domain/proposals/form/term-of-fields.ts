import { checkTerm } from "../../check-term.ts";
import { id } from "../../ids.ts";
import { type Problem, problem } from "../../problem.ts";
import { TERM_KINDS, type Term, type TermKind } from "../../term.ts";
import { asList, type FormFields, listIn, saidIn, stated } from "./form-fields.ts";

/** The term that a form says, or everything that is wrong with it, each at its field. What the form does not ask for stays as it was. */
export function termOfFields(fields: FormFields, termId: string, before?: Term): Term | readonly Problem[] {
  const kind = saidIn(fields, "kind") ?? before?.kind;
  const label = saidIn(fields, "label");
  const told = [
    ...(TERM_KINDS.some((one) => one === kind)
      ? []
      : [problem("WRONG_FORMAT", `Say what it is: one of ${TERM_KINDS.join(", ")}.`, ["kind"])]),
    ...(label === undefined
      ? [
          problem("WRONG_FORMAT", "Say what the trade calls it; a name of no person, firm or brand.", [
            "label",
          ]),
        ]
      : []),
  ];
  if (told.length > 0) return told;
  const { label: _, otherLabels, note, broader, merged, parts, withArticle, ...kept } = before ?? {};
  const others = listIn(fields, "other-labels");
  const partsNow = listIn(fields, "parts");
  const noteNow = saidIn(fields, "note");
  const broaderNow = saidIn(fields, "broader");
  const term: Term = {
    ...kept,
    ...{ id: id<"term">(termId), kind: kind as TermKind, label: label as string },
    ...(others.length > 0 ? { otherLabels: others } : {}),
    ...(saidIn(fields, "with-article") === "yes" ? { withArticle: true } : {}),
    ...(noteNow === undefined ? {} : { note: noteNow }),
    ...(broaderNow === undefined ? {} : { broader: id<"term">(broaderNow) }),
    // Put somewhere else, it is a term of its own again.
    ...(merged && broaderNow === broader ? { merged } : {}),
    ...(partsNow.length > 0 ? { parts: partsNow.map((part) => id<"term">(part)) } : {}),
  };
  const wrong = checkTerm(term);
  return wrong.length > 0 ? wrong : term;
}

/** A term as it stands in a form. */
export const fieldsOfTerm = (term: Term): FormFields => ({
  ...{ kind: term.kind, label: term.label },
  ...(term.otherLabels?.length ? { "other-labels": asList(term.otherLabels) } : {}),
  ...(term.withArticle ? { "with-article": "yes" } : {}),
  ...stated("note", term.note),
  ...stated("broader", term.broader),
  ...(term.parts?.length ? { parts: asList(term.parts) } : {}),
});
