import { GraphQLError } from "graphql";
import { idOfEdit } from "../../domain/graph-view.ts";
import { id } from "../../domain/ids.ts";
import type { Told, ToldSo } from "../../domain/live/told.ts";
import { followNews, MOST_MISSED, NewsEnded } from "../../use-cases/live/follow-news.ts";
import { followPresence, type Other, type Others } from "../../use-cases/live/follow-presence.ts";
import type { Builder } from "../builder.ts";
import { stoppable } from "../live/stoppable.ts";

/** Edits of a revision that are told one by one. */
const MOST_TOUCHED = 500;
const LONGEST_ID = 200;

const unfit = (why: string) => new GraphQLError(why, { extensions: { code: "BAD_USER_INPUT" } });

/** Everything that can be followed. Only ids, versions and numbers are told: the rest is asked for, as one may see it. */
export function addSubscription(b: Builder) {
  const sequence = "Number of the write in the ledger.";
  type Of<Kind extends Told["kind"]> = Extract<Told, { kind: Kind }>;
  const examination = b.objectRef<Of<"examination">>("ExaminationNews").implement({
    description: "A stored examination has a new version.",
    fields: (t) => ({
      sequence: t.exposeInt("sequence", { description: sequence }),
      id: t.exposeID("id"),
      version: t.exposeInt("version"),
    }),
  });
  const graph = b.objectRef<Of<"graph">>("GraphNews").implement({
    description: "The graph has a new revision.",
    fields: (t) => ({
      sequence: t.exposeInt("sequence", { description: sequence }),
      revision: t.exposeInt("revision"),
      touched: t.idList({
        description: `Ids of the terms, claims and sources that it touched; null if there are more than ${MOST_TOUCHED}.`,
        nullable: true,
        resolve: async ({ revision }, _, { store }) => {
          const count = (await store.editCounts([revision])).get(revision) ?? 0;
          if (count > MOST_TOUCHED) return null;
          return ((await store.changeAt(revision)) ?? []).map(idOfEdit);
        },
      }),
    }),
  });
  const proposal = b.objectRef<Of<"proposal">>("ProposalNews").implement({
    description: "A proposal or a dispute was changed, judged or talked about.",
    fields: (t) => ({
      sequence: t.exposeInt("sequence", { description: sequence }),
      id: t.exposeID("id"),
    }),
  });
  const REFS = { examination, graph, proposal };
  const change = b.unionType("NewsItem", {
    types: [examination, graph, proposal],
    resolveType: ({ kind }) => REFS[kind],
  });
  const news = b.objectRef<ToldSo>("News").implement({
    description: "What was changed, in the order of the ledger, none left out and none twice.",
    fields: (t) => ({
      sequence: t.exposeInt("sequence", { description: "Known up to here: go on from it with `since`." }),
      changes: t.field({ type: [change], resolve: ({ told }) => told }),
      hasMore: t.exposeBoolean("hasMore", { description: "More that was missed follows at once." }),
      readAnew: t.exposeBoolean("readAnew", {
        description: `More than ${MOST_MISSED} writes were missed, or the store was restored: read anew what is shown.`,
      }),
    }),
  });
  const other = b.objectRef<Other>("Other").implement({
    fields: (t) => ({
      isYou: t.exposeBoolean("isYou", { description: "In another window." }),
      name: t.string({
        description: "Null where one may not see it, and where there are no accounts.",
        nullable: true,
        resolve: ({ name }) => name,
      }),
      part: t.id({
        description: "The part that is open there.",
        nullable: true,
        resolve: ({ part }) => part,
      }),
      isEditing: t.exposeBoolean("isEditing"),
    }),
  });
  const others = b.objectRef<Others>("Others").implement({
    description: "Who else has a piece open.",
    fields: (t) => ({
      others: t.field({ type: [other], resolve: (told) => told.others }),
      count: t.exposeInt("count", { description: "More than are told of one by one, if there are many." }),
    }),
  });
  b.subscriptionType({
    fields: (t) => ({
      news: t.field({
        description: "What is changed: what was missed since a write first, then each as it happens.",
        type: news,
        args: {
          since: t.arg.int({ description: "The last write that is known; none is the newest." }),
          kinds: t.arg({ type: [b.enums.newsKind], description: "None: all." }),
          about: t.arg.id({ description: "Only this examination or proposal, beside the graph." }),
        },
        subscribe: (_, { since, kinds, about }, context) => {
          if (since !== null && since !== undefined && since < 0)
            throw unfit("`since` is the number of a write.");
          const ask = {
            ...(typeof since === "number" ? { since } : {}),
            ...(kinds ? { kinds } : {}),
            ...(about ? { about: id(about) } : {}),
          };
          return stoppable((stop) => told(followNews(context, ask, stop)));
        },
        resolve: (batch) => batch,
      }),
      presence: t.field({
        description: "Who else has a piece open. As long as one follows it, one is told to the others.",
        type: others,
        args: {
          examination: t.arg.id({ required: true }),
          part: t.arg.id({ description: "The part that is open here." }),
          isEditing: t.arg.boolean({ required: true, defaultValue: false }),
        },
        subscribe: (_, { examination, part, isEditing }, context) => {
          if ([examination, part ?? ""].some((each) => each.length > LONGEST_ID))
            throw unfit(`An id has at most ${LONGEST_ID} characters.`);
          return stoppable((stop) =>
            told(
              followPresence(
                context,
                id(examination),
                { ...(part ? { part: id(part) } : {}), isEditing },
                stop,
              ),
            ),
          );
        },
        resolve: (present) => present,
      }),
    }),
  });
}

/** What ends with a refusal says its code. */
async function* told<Given>(followed: AsyncGenerator<Given>): AsyncGenerator<Given> {
  try {
    yield* followed;
  } catch (failure) {
    if (!(failure instanceof NewsEnded)) throw failure;
    throw new GraphQLError(failure.message, { extensions: { code: failure.problem.code } });
  }
}
