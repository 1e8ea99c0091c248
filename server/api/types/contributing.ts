import { id } from "../../domain/ids.ts";
import type { KeptProposal } from "../../domain/proposals/kept-proposal.ts";
import { changeProposal } from "../../use-cases/do/change-proposal.ts";
import { comment } from "../../use-cases/do/comment.ts";
import { decideOnProposal } from "../../use-cases/do/decide-on-proposal.ts";
import { disputeClaim } from "../../use-cases/do/dispute-claim.ts";
import { endDispute } from "../../use-cases/do/end-dispute.ts";
import { makeProposal } from "../../use-cases/do/make-proposal.ts";
import { isRefusal, type Refusal } from "../../use-cases/refusal.ts";
import type { Builder } from "../builder.ts";
import { readAsked, readSaid } from "../proposal-from-input.ts";

const LOOKED_AT = "Version that was looked at; refused if somebody changed it meanwhile.";

/** What a change of a proposal gives. */
const changed = async (made: Promise<KeptProposal | Refusal>) => {
  const proposal = await made;
  return isRefusal(proposal) ? proposal : { proposal };
};

/** What many hands do to the graph: propose, decide, talk, dispute. */
export function addContributing(b: Builder) {
  const input = b.inputType("ProposalInput", {
    fields: (t) => ({
      kind: t.field({ type: b.enums.proposalKind, required: true }),
      title: t.string({ required: true, description: "In a few words what it is." }),
      why: t.string({ required: true, description: "Why the graph should change." }),
      change: t.field({ type: "Change", required: true }),
      base: t.int({ description: "Revision it was made on; none is the newest." }),
      form: t.field({ type: "FormFields", description: "What stands in the form it is written in." }),
    }),
  });
  const changes = b.inputType("ProposalChanges", {
    description: "What is left out stays as it is.",
    fields: (t) => ({
      kind: t.field({ type: b.enums.proposalKind }),
      title: t.string(),
      why: t.string(),
      change: t.field({ type: "Change" }),
      base: t.int(),
      form: t.field({ type: "FormFields" }),
    }),
  });
  b.objectType("ProposalChanged", {
    fields: (t) => ({
      proposal: t.expose("proposal", { type: "Proposal" }),
      stillNeeded: t.int({
        description: "Reviewers who still have to agree, as the change moves many conclusions.",
        resolve: ({ stillNeeded = 0 }) => stillNeeded,
      }),
    }),
  });
  b.mutationFields((t) => {
    const looked = {
      id: t.arg.id({ required: true }),
      expectedVersion: t.arg.int({ required: true, description: LOOKED_AT }),
    };
    return {
      makeProposal: t.field({
        description:
          "A draft is seen by its maker alone, and may be unfit still; what is open is refused if the graph would refuse it.",
        type: b.results.proposal,
        args: {
          input: t.arg({ type: input, required: true }),
          open: t.arg.boolean({
            required: true,
            defaultValue: false,
            description: "Hands it to the reviewers at once.",
          }),
        },
        resolve: async (_, args, context) =>
          changed(makeProposal(context, await readAsked(context, args.input, args.open ? "open" : "draft"))),
      }),
      changeProposal: t.field({
        description: "For its maker alone.",
        type: b.results.proposal,
        args: { ...looked, changes: t.arg({ type: changes, required: true }) },
        resolve: (_, args, context) =>
          changed(changeProposal(context, args.id, args.expectedVersion, "change", readSaid(args.changes))),
      }),
      openProposal: t.field({
        description: "Hands it to the reviewers, with what is said otherwise.",
        type: b.results.proposal,
        args: { ...looked, changes: t.arg({ type: changes }) },
        resolve: (_, args, context) =>
          changed(
            changeProposal(context, args.id, args.expectedVersion, "open", readSaid(args.changes ?? {})),
          ),
      }),
      withdrawProposal: t.field({
        description: "Takes it back; for its maker alone.",
        type: b.results.proposal,
        args: looked,
        resolve: (_, args, context) =>
          changed(changeProposal(context, args.id, args.expectedVersion, "withdraw")),
      }),
      decideOnProposal: t.field({
        description:
          "What a reviewer makes of it. Accepting makes a revision as soon as enough reviewers agree.",
        type: b.results.proposal,
        args: {
          ...looked,
          verdict: t.arg({ type: b.enums.verdict, required: true }),
          reason: t.arg.string({
            required: true,
            defaultValue: "",
            description: "Needed but for accepting.",
          }),
          supersededBy: t.arg.id({ description: "The proposal that takes its place." }),
        },
        resolve: (_, { verdict, reason, supersededBy, ...args }, context) =>
          decideOnProposal(context, args.id, args.expectedVersion, {
            ...{ verdict, reason },
            ...(supersededBy ? { supersededBy } : {}),
          }),
      }),
      comment: t.field({
        description: "Says something of a proposal or a dispute.",
        type: b.results.comment,
        args: {
          on: t.arg.id({ required: true }),
          text: t.arg.string({ required: true }),
          answers: t.arg.id({ description: "The comment that it answers." }),
          mentions: t.arg.idList({ description: "Persons whom it calls.", required: true, defaultValue: [] }),
        },
        resolve: (_, { on, text, answers, mentions }, context) =>
          comment(context, { on, text, mentions: mentions.map(String), ...(answers ? { answers } : {}) }),
      }),
      disputeClaim: t.field({
        type: b.results.dispute,
        args: { claim: t.arg.id({ required: true }), says: t.arg.string({ required: true }) },
        resolve: (_, args, context) => disputeClaim(context, id(args.claim), args.says),
      }),
      endDispute: t.field({
        description: "Ends it with a decision that stays. Only who brought it up takes it back.",
        type: b.results.dispute,
        args: {
          ...looked,
          outcome: t.arg({ type: b.enums.disputeOutcome, required: true }),
          says: t.arg.string({ required: true, defaultValue: "" }),
        },
        resolve: (_, args, context) => endDispute(context, args.id, args.expectedVersion, args),
      }),
    };
  });
}
