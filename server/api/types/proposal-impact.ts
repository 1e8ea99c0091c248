import type { TermId } from "../../domain/ids.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import { isUndecided } from "../../domain/proposals/proposal.ts";
import type { Count } from "../../ports/counts-under-way.ts";
import type { Examined } from "../../use-cases/ask/examine-piece.ts";
import type { ForeseenDisagreement } from "../../use-cases/ask/foresee-disagreements.ts";
import { foreseeImpact, type Impact, type MovedPiece } from "../../use-cases/ask/foresee-impact.ts";
import { unfitOf } from "../../use-cases/unfit-of.ts";
import type { Builder } from "../builder.ts";
import type { Context } from "../context.ts";

/** Cost of examining every stored piece that a change can touch, twice. */
const IMPACT_WEIGHT = 500;
/** Pieces of which the words and the answers are told. */
const MOST_TOLD = 20;

/** Everybody is told of what they asked for themselves. */
const countName = ({ id }: KeptProposal, { caller }: Context): string => `${id} ${caller?.id ?? ""}`;

/** What accepting a proposal would do to what is concluded now. */
export function addProposalImpact(b: Builder) {
  const label = b.objectRef<{ readonly term: TermId; readonly label: string }>("LabelOfTerm").implement({
    description: "What a term is called on one side.",
    fields: (t) => ({ term: t.exposeID("term"), label: t.exposeString("label") }),
  });
  const answer = b.objectRef<Examined>("AnswerOnOneSide").implement({
    description: "The answer on a piece, as it is or as it would be.",
    fields: (t) => ({
      report: t.expose("report", { type: "Report" }),
      words: t.expose("words", { type: "ReportWords" }),
      labels: t.field({
        extensions: { entries: 100 },
        type: [label],
        resolve: ({ terms }) => terms.map(({ id, label: name }) => ({ term: id, label: name })),
      }),
    }),
  });
  const moved = b.objectRef<MovedPiece>("MovedPiece").implement({
    description: "A stored piece of which something would be said otherwise.",
    fields: (t) => ({
      id: t.id({ resolve: ({ examination }) => examination.id }),
      title: t.string({ resolve: ({ examination }) => examination.piece.title }),
      invented: t.boolean({ resolve: ({ examination }) => examination.piece.invented === true }),
      examination: t.expose("examination", { type: "Examination" }),
      headlineBefore: t.string({
        description: "The conclusion as it is; null if it would read the same.",
        nullable: true,
        resolve: ({ words }) => words.headlineBefore,
      }),
      headline: t.string({ nullable: true, resolve: ({ words }) => words.headline }),
      lines: t.field({
        description: "What would be said otherwise: `before` is as it is, `now` as it would be.",
        extensions: { entries: 5 },
        type: ["ShiftLine"],
        resolve: ({ words }) => words.lines,
      }),
      before: t.field({ type: answer, nullable: true, resolve: (piece) => piece.before }),
      after: t.field({ type: answer, nullable: true, resolve: (piece) => piece.after }),
    }),
  });
  const disagreement = b.objectRef<ForeseenDisagreement>("ForeseenDisagreement").implement({
    fields: (t) => ({ id: t.exposeID("id"), says: t.exposeString("says") }),
  });
  const impact = b.objectRef<Impact>("Impact").implement({
    description: "What accepting a change would do, were it accepted now.",
    fields: (t) => ({
      revision: t.exposeInt("revision", { description: "The revision it was laid over." }),
      looked: t.exposeInt("looked", {
        description:
          "Stored examinations that were looked at, of those that it can touch; no other can change.",
      }),
      reached: t.exposeInt("reached", {
        description: "Where one can go on: an answer `after` it looks at what is left.",
        nullable: true,
      }),
      left: t.exposeInt("left", {
        description: "How many more it can touch: an answer is given after some two seconds of looking.",
      }),
      movedCount: t.exposeInt("movedCount", { description: "How many would come to something else." }),
      moved: t.field({
        description: "The first of them that are shown to you, by id.",
        extensions: { entries: 10 },
        type: [moved],
        resolve: (one) => one.moved,
      }),
      hidden: t.exposeInt("hidden", { description: "How many of them are not shown to you." }),
      reviewersNeeded: t.exposeInt("reviewersNeeded", {
        description: "Reviewers who have to agree in a shared house.",
      }),
      created: t.field({
        description: "Disagreements that it would bring up; not told again by an answer that goes on.",
        type: [disagreement],
        resolve: ({ disagreements }) => disagreements.created,
      }),
      settled: t.field({
        description: "Disagreements that it would settle; not told again by an answer that goes on.",
        type: [disagreement],
        resolve: ({ disagreements }) => disagreements.settled,
      }),
    }),
  });
  b.objectField("Proposal", "impact", (t) =>
    t.field({
      description: "Null where the graph would refuse it (`unfit`), and where it is decided.",
      type: impact,
      nullable: true,
      extensions: { weight: IMPACT_WEIGHT },
      args: {
        pieces: t.arg.int({ required: true, defaultValue: 10, description: `0 to ${MOST_TOLD}.` }),
        after: t.arg.int({ description: "How far an answer before has reached, where some were left." }),
      },
      resolve: async (proposal, { pieces, after }, context) => {
        if (!isUndecided(proposal)) return null;
        if ((await unfitOf(context.store, proposal.change)) !== undefined) return null;
        const counting = context.counts.begin(countName(proposal, context));
        try {
          return await foreseeImpact(context, proposal.change, Math.max(0, Math.min(MOST_TOLD, pieces)), {
            stop: context.stop,
            ...(typeof after === "number" ? { after } : {}),
            onLooked: (done, of, found) => counting.tell({ done, of, found }),
          });
        } finally {
          counting.end();
        }
      },
    }),
  );
  const soFar = b.objectRef<Count>("ImpactSoFar").implement({
    description: "How far an impact is that is being worked out.",
    fields: (t) => ({
      looked: t.int({ description: "Stored examinations looked at.", resolve: ({ done }) => done }),
      of: t.exposeInt("of", { description: "Of all that it can touch." }),
      moved: t.int({
        description: "How many of those looked at for this answer would come to something else.",
        resolve: ({ found }) => found,
      }),
    }),
  });
  b.objectField("Proposal", "impactSoFar", (t) =>
    t.field({
      description:
        "How far the impact is that you asked for last, at whichever server; null where none is worked out for you, and in its first half second where another server does it.",
      type: soFar,
      nullable: true,
      resolve: (proposal, _, context) => context.counts.find(countName(proposal, context)),
    }),
  );
}
