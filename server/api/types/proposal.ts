import { id, type TermId } from "../../domain/ids.ts";
import { regionsOf } from "../../domain/proposals/kept-proposal.ts";
import { isUndecided } from "../../domain/proposals/proposal.ts";
import type { Review } from "../../domain/proposals/review.ts";
import { findProposal } from "../../use-cases/ask/find-proposal.ts";
import { listProposals, listProposalsOn, listToReview } from "../../use-cases/ask/list-proposals.ts";
import { listReviews } from "../../use-cases/ask/list-talk.ts";
import { readStandingThing } from "../../use-cases/ask/read-standing-thing.ts";
import { type ProposedEdit, sayProposal } from "../../use-cases/ask/say-proposal.ts";
import { stepsOfProposal } from "../../use-cases/ask/steps-of-proposal.ts";
import { unfitOf } from "../../use-cases/unfit-of.ts";
import type { Builder } from "../builder.ts";
import { findNamed } from "../find-named.ts";
import { readPage } from "../read-page.ts";
import type { PersonRef } from "./person.ts";

/** Regions that a line of a list names. */
const REGIONS_NAMED = 5;

/** The type of an edit in words, for what is not proposed yet. */
export type ProposedEditRef = ReturnType<typeof addProposal>;

/** Edits of a proposal that are put in words. */
const EDITS_IN_WORDS = 20;

/** A change of the graph that somebody asks for, and the lists of them. */
export function addProposal(b: Builder, person: PersonRef) {
  b.scalarType("Change", {
    description:
      "A change of the graph as one JSON value: a list of edits, each as `edit` in docs/formats/dump.schema.json.",
    serialize: (change) => change,
    parseValue: (value) => value,
  });
  b.scalarType("FormFields", {
    description: "What stands in a form: an object of texts by field, those of docs/formats/claims-csv.md.",
    serialize: (form) => form,
    parseValue: (value) => value,
  });
  const compared = b.objectRef<ProposedEdit["rows"][number]>("ComparedLine").implement({
    description: "One thing that one or both sides say.",
    fields: (t) => ({
      what: t.exposeString("what"),
      before: t.exposeString("before", { nullable: true }),
      after: t.exposeString("after", { nullable: true }),
      differs: t.exposeBoolean("differs"),
    }),
  });
  const edit = b.objectRef<ProposedEdit>("ProposedEdit").implement({
    description: "One edit of a proposal: the thing as it is beside the thing as it would be.",
    fields: (t) => ({
      of: t.id({ description: "Id of the term, claim or source.", resolve: (one) => one.id }),
      kind: t.exposeString("kind", { description: "term, claim or source." }),
      does: t.expose("does", { type: b.enums.editKind }),
      before: t.exposeString("before", { nullable: true, description: "As a line; null where it is new." }),
      after: t.exposeString("after", { nullable: true, description: "Null where it is withdrawn." }),
      rows: t.field({ type: [compared], extensions: { entries: 10 }, resolve: (one) => one.rows }),
    }),
  });
  const review = b.objectRef<Review>("Review").implement({
    description: "What a reviewer said of one version.",
    fields: (t) => ({
      version: t.exposeInt("version"),
      by: t.field({ type: person, resolve: ({ by }) => ({ id: by }) }),
      isMine: t.boolean({ resolve: ({ by }, _, { caller }) => by === caller?.id }),
      at: t.exposeString("at"),
      verdict: t.expose("verdict", { type: b.enums.verdict }),
      reason: t.exposeString("reason"),
    }),
  });
  const step = b.objectRef<ReturnType<typeof stepsOfProposal>[number]>("ProposalStepAllowed").implement({
    fields: (t) => ({
      step: t.expose("step", { type: b.enums.proposalStep }),
      refused: t.string({
        description: "Why whoever asks may not do it now; null if they may.",
        nullable: true,
        resolve: ({ refused }) => refused,
      }),
    }),
  });
  b.objectType("Proposal", {
    fields: (t) => ({
      id: t.exposeID("id"),
      version: t.exposeInt("version", {
        description: "Counts its changes; a change names the one it was made on.",
      }),
      kind: t.expose("kind", { type: b.enums.proposalKind }),
      title: t.exposeString("title"),
      why: t.exposeString("why"),
      state: t.expose("state", { type: b.enums.proposalState }),
      base: t.exposeInt("base", { description: "Revision it was made on." }),
      by: t.field({ type: person, resolve: ({ by }) => ({ id: by }) }),
      isMine: t.boolean({ resolve: ({ by }, _, { caller }) => by === caller?.id }),
      madeAt: t.exposeString("madeAt"),
      changedAt: t.exposeString("changedAt"),
      origin: t.exposeString("origin", { nullable: true, description: "House and proposal it came from." }),
      revision: t.int({
        nullable: true,
        description: "Revision that accepting it made.",
        resolve: ({ revision }) => revision,
      }),
      supersededBy: t.field({
        description: "The proposal that took its place.",
        type: "Proposal",
        nullable: true,
        resolve: ({ supersededBy }, _, context) =>
          supersededBy === undefined ? null : findProposal(context, supersededBy),
      }),
      change: t.field({ type: "Change", resolve: ({ change }) => change }),
      regions: t.field({
        description: "The first regions that its claims are scoped to, or name as places.",
        type: ["Term"],
        resolve: (proposal, _, { load }) =>
          load.terms.many(regionsOf(proposal).slice(0, REGIONS_NAMED), undefined),
      }),
      form: t.field({
        description: "What stands in the form it is written in; for its maker alone.",
        type: "FormFields",
        nullable: true,
        resolve: ({ form, by }, _, { caller }) => (by === caller?.id ? form : undefined),
      }),
      editCount: t.int({ resolve: ({ change }) => change.length }),
      edits: t.field({
        description: "The first edits, as it is beside as it would be.",
        type: [edit],
        extensions: { weight: 20, entries: EDITS_IN_WORDS },
        resolve: (proposal, _, context) => sayProposal(context, proposal, findNamed(context), EDITS_IN_WORDS),
      }),
      unfit: t.field({
        description: "Why the graph would refuse it now; null if it fits, or where it is decided.",
        type: "Problem",
        nullable: true,
        extensions: { weight: 5 },
        resolve: (proposal, _, { store }) => (isUndecided(proposal) ? unfitOf(store, proposal.change) : null),
      }),
      reviews: t.field({
        description: "Oldest first.",
        type: [review],
        extensions: { entries: 10 },
        resolve: (proposal, _, context) => listReviews(context, proposal.id),
      }),
      may: t.field({
        description: "Every step, and why whoever asks may not take it.",
        type: [step],
        extensions: { entries: 7 },
        resolve: (proposal, _, context) => stepsOfProposal(context, proposal),
      }),
    }),
  });
  const termOf = (region: string | number | null | undefined): { readonly region?: TermId } =>
    region === null || region === undefined ? {} : { region: id(String(region)) };
  b.queryFields((t) => ({
    proposal: t.field({
      description: "Null if there is none, or if it is somebody else's draft.",
      type: "Proposal",
      nullable: true,
      args: { id: t.arg.id({ required: true }) },
      resolve: (_, args, context) => findProposal(context, args.id),
    }),
    proposals: t.field({
      description: "Newest first; all that are named must hold. Drafts are seen by their makers alone.",
      type: b.connections.proposals,
      args: {
        state: t.arg({ type: b.enums.proposalState }),
        kind: t.arg({ type: b.enums.proposalKind }),
        region: t.arg.id({ description: "Those whose claims are scoped to it, or to a region within it." }),
        by: t.arg.id({ description: "Id of the person who made it." }),
        mine: t.arg.boolean({ description: "Those of whoever asks." }),
        ...b.pageOf(20),
      },
      resolve: (_, { state, kind, region, by, mine, ...page }, context) => {
        const maker = mine ? context.caller?.id : by;
        const filter = { ...(state ? { state } : {}), ...(kind ? { kind } : {}), ...termOf(region) };
        return readPage(page, (asked) =>
          listProposals(context, { ...filter, ...(maker ? { by: maker } : {}) }, asked),
        );
      },
    }),
    proposalsToReview: t.field({
      description: "Open ones, oldest first; in a shared house not those of whoever asks.",
      type: b.connections.proposals,
      args: {
        kind: t.arg({ type: b.enums.proposalKind }),
        region: t.arg.id(),
        ...b.pageOf(20),
      },
      resolve: (_, { kind, region, ...page }, context) =>
        readPage(page, (asked) =>
          listToReview(context, { ...(kind ? { kind } : {}), ...termOf(region) }, asked),
        ),
    }),
    standing: t.field({
      description:
        "A term, claim or source as it stands, as the one edit that would take it out: put `after` beside its `before`. No edit where there is none.",
      type: "Change",
      args: { id: t.arg.id({ required: true }) },
      resolve: (_, args, context) => readStandingThing(context, args.id),
    }),
    proposalsOn: t.field({
      description: "Those not decided yet that edit a term, claim or source; newest first.",
      type: ["Proposal"],
      extensions: { entries: 5 },
      args: { id: t.arg.id({ required: true }) },
      resolve: (_, args, context) => listProposalsOn(context, args.id),
    }),
  }));
  return edit;
}
