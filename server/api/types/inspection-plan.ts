import { id } from "../../domain/ids.ts";
import type { PlanAnswer } from "../../domain/weighing/looks.ts";
import {
  type InspectionPlan,
  type PlannedLook,
  planInspection,
} from "../../use-cases/ask/plan-inspection.ts";
import { isRefusal } from "../../use-cases/refusal.ts";
import { type AsOf, asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { PLAN_WEIGHT } from "../limits/operation-cost.ts";
import type { addFieldSheet } from "./field-sheet.ts";

/** Entries that the lists are taken to have, for the cost. */
const ENTRIES = { parts: 25, items: 24, alsoOn: 2, claims: 3 };
/** What an answer can do to the claim, each once: a missing one does not compile. */
const DOES = Object.keys({
  "rules out": true,
  against: true,
  for: true,
  "says nothing": true,
} satisfies Record<PlanAnswer["claim"], true>) as PlanAnswer["claim"][];

/** What to look at on a piece before it is there, in order. */
export function addInspectionPlan(b: Builder, { position }: ReturnType<typeof addFieldSheet>) {
  const does = b.enumType("AnswerDoes", {
    description: "What an answer does to the claim.",
    values: Object.fromEntries(
      DOES.map((value) => [value.toUpperCase().replaceAll(" ", "_"), { value }]),
    ) as Record<string, { value: PlanAnswer["claim"] }>,
  });
  const answer = b.objectRef<{ readonly answer: PlanAnswer; readonly says: string }>("PlanAnswer").implement({
    description: "What one answer would do.",
    fields: (t) => ({
      claim: t.field({ type: does, resolve: ({ answer: { claim } }) => claim }),
      log10: t.float({
        description: "Of the Bayes factor for the claimed years; null beyond the model.",
        nullable: true,
        resolve: ({ answer: { log10 } }) => log10,
      }),
      state: t.field({
        description: "The state of the part that it speaks for, if it does.",
        type: b.enums.partState,
        nullable: true,
        resolve: ({ answer: { state } }) => state,
      }),
      says: t.exposeString("says"),
    }),
  });
  const item = b.objectRef<AsOf<PlannedLook>>("PlanItem").implement({
    description: "Something to look at.",
    fields: (t) => ({
      rank: t.exposeInt("rank", { description: "Its place in the order of what tells most, from 1 on." }),
      position: t.expose("position", { type: position }),
      part: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ kindOfPart, at }, _, { load }) => load.terms.one(kindOfPart, at),
      }),
      feature: t.field({
        type: "Term",
        nullable: true,
        resolve: ({ feature, at }, _, { load }) => load.terms.one(feature, at),
      }),
      alsoOn: t.field({
        description: "Other kinds of part on which the same would tell.",
        extensions: { entries: ENTRIES.alsoOn },
        type: ["Term"],
        resolve: ({ alsoOn, at }, _, { load }) => load.terms.many(alsoOn, at),
      }),
      bits: t.exposeFloat("bits", { description: "Expected of the claim." }),
      bitsOfState: t.exposeFloat("bitsOfState", { description: "Expected of the state of the part." }),
      means: t.exposeString("means", { description: "What it would mean to see it; may be empty." }),
      ifSeen: t.field({
        type: answer,
        resolve: ({ ifSeen, answers }) => ({ answer: ifSeen, says: answers.ifSeen }),
      }),
      ifAbsent: t.field({
        type: answer,
        resolve: ({ ifAbsent, answers }) => ({ answer: ifAbsent, says: answers.ifAbsent }),
      }),
      bases: t.field({ type: [b.enums.basis], resolve: ({ bases }) => bases }),
      claims: t.field({
        extensions: { entries: ENTRIES.claims },
        type: ["Claim"],
        resolve: ({ claims, at }, _, { load }) => load.claims.many(claims, at),
      }),
    }),
  });
  const plan = b.objectRef<InspectionPlan>("InspectionPlan").implement({
    description: "What to look at on a piece of an attribution before it is there.",
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
      date: t.string({ resolve: ({ ask }) => ask.date }),
      parts: t.field({
        description: "The parts that the form is expected to have.",
        extensions: { entries: ENTRIES.parts },
        type: ["Term"],
        resolve: ({ parts, revision }, _, { load }) => load.terms.many(parts, revision),
      }),
      items: t.field({
        description: "By position; in each the most telling first.",
        extensions: { entries: ENTRIES.items },
        type: [item],
        resolve: ({ items, revision }) => items.map((each) => asOf(each, revision)),
      }),
      considered: t.exposeInt("considered", { description: "Looks that these were chosen from." }),
      isCut: t.exposeBoolean("isCut", {
        description: "More features are looked for on the parts, too many to weigh.",
      }),
    }),
  });
  const result = b.unionType("InspectionPlanResult", {
    types: [plan, "Refused"],
    resolveType: (found) => (isRefusal(found) ? "Refused" : plan),
  });
  b.queryField("inspectionPlan", (t) =>
    t.field({
      description:
        "What to look at, in order, on a piece of a form that is claimed to be of a place and date.",
      extensions: { weight: PLAN_WEIGHT },
      type: result,
      args: {
        form: t.arg.id({ required: true }),
        region: t.arg.id(),
        date: t.arg.string({ required: true, description: "EDTF, read as one event." }),
        examined: t.arg.int({ required: true, description: "Year in which the piece will be looked at." }),
        revision: t.arg.int({ description: "Number of a revision; none is the newest." }),
      },
      resolve: (_, { form, region, date, examined, revision }, context) => {
        const ask = {
          ...{ form: id<"term">(form), date, examined },
          ...(region ? { region: id<"term">(region) } : {}),
        };
        return planInspection(context, ask, revision ?? undefined);
      },
    }),
  );
}
