import type { KeptDispute } from "../../domain/proposals/dispute.ts";
import { findDispute } from "../../use-cases/ask/find-dispute.ts";
import { findTalkedAbout } from "../../use-cases/ask/find-talked-about.ts";
import { listComments, listDisputes, listDisputesOf, listMentions } from "../../use-cases/ask/list-talk.ts";
import type { Builder } from "../builder.ts";
import { connectionFrom } from "../connection.ts";
import { readPage } from "../read-page.ts";
import type { PersonRef } from "./person.ts";

/** What is said of proposals and disputes, and disputes of claims. */
export function addDiscussion(b: Builder, person: PersonRef) {
  b.objectType("Comment", {
    description: "Something that somebody said of a proposal or of a dispute; never changed.",
    fields: (t) => ({
      id: t.exposeID("id"),
      on: t.exposeID("on", { description: "Id of what it is about." }),
      text: t.exposeString("text"),
      by: t.field({ type: person, resolve: ({ by }) => ({ id: by }) }),
      isMine: t.boolean({ resolve: ({ by }, _, { caller }) => by === caller?.id }),
      at: t.exposeString("at"),
      answers: t.id({
        description: "Id of the comment that it answers.",
        nullable: true,
        resolve: ({ answers }) => answers,
      }),
      mentions: t.field({ type: [person], resolve: ({ mentions }) => mentions.map((id) => ({ id })) }),
    }),
  });
  const decision = b.objectRef<NonNullable<KeptDispute["decision"]>>("DisputeDecision").implement({
    fields: (t) => ({
      outcome: t.expose("outcome", { type: b.enums.disputeOutcome }),
      says: t.exposeString("says"),
      by: t.field({ type: person, resolve: ({ by }) => ({ id: by }) }),
      isMine: t.boolean({ resolve: ({ by }, _, { caller }) => by === caller?.id }),
      at: t.exposeString("at"),
    }),
  });
  b.objectType("Dispute", {
    description: "Doubt of an accepted claim. It lowers nothing by itself.",
    fields: (t) => ({
      id: t.exposeID("id"),
      version: t.exposeInt("version"),
      claimId: t.id({ resolve: ({ claim }) => claim }),
      claim: t.field({
        description: "As it stands now; null where it was withdrawn since.",
        type: "Claim",
        nullable: true,
        resolve: ({ claim }, _, { load }) => load.claims.one(claim, undefined),
      }),
      says: t.exposeString("says"),
      by: t.field({ type: person, resolve: ({ by }) => ({ id: by }) }),
      isMine: t.boolean({ resolve: ({ by }, _, { caller }) => by === caller?.id }),
      at: t.exposeString("at"),
      state: t.expose("state", { type: b.enums.disputeState }),
      decision: t.field({
        description: "How it ended; null while it is open.",
        type: decision,
        nullable: true,
        resolve: (dispute) => dispute.decision,
      }),
    }),
  });
  for (const name of ["Proposal", "Dispute"] as const)
    b.objectField(name, "comments", (t) =>
      t.field({
        description: "Oldest first.",
        type: b.connections.comments,
        args: b.pageOf(50),
        resolve: ({ id }, args, context) => readPage(args, (page) => listComments(context, id, page)),
      }),
    );
  b.objectField("Claim", "disputes", (t) =>
    t.field({
      description: "Newest first, whatever the revision; those that ended too.",
      type: ["Dispute"],
      extensions: { weight: 2 },
      resolve: ({ id }, _, context) => listDisputesOf(context, id),
    }),
  );
  b.objectField("Claim", "openDisputes", (t) =>
    t.int({
      description: "How many disputes of it are open now, whatever the revision.",
      resolve: ({ id }, _, { load }) => load.openDisputes.one(id),
    }),
  );
  b.queryFields((t) => ({
    dispute: t.field({
      type: "Dispute",
      nullable: true,
      args: { id: t.arg.id({ required: true }) },
      resolve: (_, { id }, context) => findDispute(context, id),
    }),
    disputes: t.field({
      description: "Newest first.",
      type: b.connections.disputes,
      args: {
        state: t.arg({ type: b.enums.disputeState, required: true, defaultValue: "open" }),
        ...b.pageOf(20),
      },
      resolve: (_, { state, ...args }, context) =>
        readPage(args, (page) => listDisputes(context, state, page)),
    }),
    comments: t.field({
      description:
        "What is said of a proposal or a dispute, oldest first; nothing of what is not shown to whoever asks.",
      type: b.connections.comments,
      args: { on: t.arg.id({ required: true }), ...b.pageOf(50) },
      resolve: async (_, { on, ...args }, context) =>
        (await findTalkedAbout(context, on)) === undefined
          ? connectionFrom({ rows: [], cursors: [], hasMore: false, total: 0 }, null, (row) => row)
          : readPage(args, (page) => listComments(context, on, page)),
    }),
    mentions: t.field({
      description: "Comments that call whoever asks, newest first.",
      type: ["Comment"],
      args: { first: t.arg.int({ required: true, defaultValue: 20, description: "1 to 200." }) },
      resolve: (_, { first }, context) => listMentions(context, first),
    }),
  }));
}
