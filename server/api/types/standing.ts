import type { ShiftLine } from "../../domain/shift-words.ts";
import type { StateOdds } from "../../domain/weighing/odds.ts";
import {
  type ChangedSince,
  type ExaminationStanding,
  readStanding,
} from "../../use-cases/ask/read-standing.ts";
import { asOf } from "../as-of.ts";
import type { Builder } from "../builder.ts";
import { EXAMINE_WEIGHT } from "../limits/operation-cost.ts";

/** How a stored examination stands after changes of the graph. */
export function addStanding(b: Builder) {
  const states = b.objectRef<StateOdds>("StateOdds").implement({
    description: "How probable each state of a part is; the four add up to 1.",
    fields: (t) => ({
      original: t.exposeFloat("original"),
      later: t.exposeFloat("later"),
      reused: t.exposeFloat("reused"),
      reworked: t.exposeFloat("reworked"),
    }),
  });
  const shifted = b.objectRef<NonNullable<ShiftLine["odds"]>>("ShiftedOdds").implement({
    fields: (t) => ({ before: t.expose("before", { type: states }), now: t.expose("now", { type: states }) }),
  });
  b.objectType("ShiftLine", {
    description: "One thing that is said otherwise than before.",
    fields: (t) => ({
      kind: t.expose("kind", { type: b.enums.shiftKind }),
      strip: t.id({
        description: "The strip to look at, where there is one: a finding.",
        nullable: true,
        resolve: ({ strip }) => strip,
      }),
      says: t.exposeString("says", {
        description: "What it is about; of a rule-out, its sentence without the full stop.",
      }),
      before: t.exposeString("before"),
      now: t.exposeString("now"),
      odds: t.field({
        description: "Of what a part most probably is: the probabilities that the words are of.",
        type: shifted,
        nullable: true,
        resolve: ({ odds }) => odds,
      }),
    }),
  });
  const changed = b.objectRef<ChangedSince>("ChangedSince").implement({
    description: "What the newest revision makes of a stored piece that an earlier one did not.",
    fields: (t) => ({
      since: t.exposeInt("since", { description: "The earlier revision." }),
      claims: t.field({
        description: "Claims the answer is read from that are new or otherwise than they were.",
        extensions: { entries: 5 },
        type: ["Claim"],
        resolve: ({ claims }) => claims.map((claim) => asOf(claim, undefined)),
      }),
      gone: t.field({
        description: "Claims it was read from and is no longer, as they stood.",
        extensions: { entries: 5 },
        type: ["Claim"],
        resolve: ({ gone, since }) => gone.map((claim) => asOf(claim, since)),
      }),
      claimCount: t.int({ resolve: ({ claims, gone }) => claims.length + gone.length }),
      headlineBefore: t.string({
        description: "The conclusion as it was; null if it reads the same.",
        nullable: true,
        resolve: ({ words }) => words.headlineBefore,
      }),
      lines: t.field({
        description: "What is said otherwise; none where the claims changed nothing of it.",
        extensions: { entries: 5 },
        type: ["ShiftLine"],
        resolve: ({ words }) => words.lines,
      }),
    }),
  });
  const standing = b.objectRef<ExaminationStanding>("Standing").implement({
    description:
      "How a stored examination stands: each is examined again in the background when the graph changes.",
    fields: (t) => ({
      revision: t.int({
        description: "The revision on which it was examined again last; null before the first time.",
        nullable: true,
        resolve: ({ revision }) => revision,
      }),
      upToDate: t.exposeBoolean("upToDate", {
        description: "No later change that this process knows of can have touched it.",
      }),
      changedSince: t.field({
        description: "What changed since; null if nothing did.",
        nullable: true,
        type: changed,
        resolve: ({ changed }) => changed,
      }),
    }),
  });
  b.objectField("Examination", "standing", (t) =>
    t.field({
      description:
        "How it stands, and what changed since the revision asked for or since its record was changed, whichever is later.",
      extensions: { weight: EXAMINE_WEIGHT },
      type: standing,
      args: { since: t.arg.int() },
      resolve: (examination, { since }, context) => readStanding(context, examination, since ?? undefined),
    }),
  );
}
