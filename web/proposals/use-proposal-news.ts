import { useApolloClient } from "@apollo/client/react";
import { useMemo } from "react";
import { useNews } from "../shared/live/use-news.ts";
import type { SeenTalk } from "./news-in-words.ts";
import { type ProposalFieldsFragment, ProposalPageDocument } from "./ProposalPage.graphql.ts";
import { useDiscussion } from "./use-discussion.ts";
import { useTalkNews } from "./use-talk-news.ts";

/** Keeps an open proposal and its talk up with what others do, and says what they did. */
export function useProposalNews(proposal: ProposalFieldsFragment) {
  const { id } = proposal;
  const client = useApolloClient();
  const talk = useDiscussion(id);
  const { comments } = talk;
  const seen = useMemo((): SeenTalk | undefined => {
    if (comments === undefined) return undefined;
    const { version, isMine, state, reviews } = proposal;
    const said = comments.edges.map(({ node }) => node);
    return { version, isMine, state, reviews, comments: said, commentCount: comments.totalCount };
  }, [proposal, comments]);
  const news = useTalkNews(seen);
  const live = useNews({
    ...{ about: id, withGraph: true },
    read: () =>
      Promise.all([
        client.query({ query: ProposalPageDocument, variables: { id }, fetchPolicy: "network-only" }),
        talk.readAgain(),
      ]),
  });
  return { talk, ...news, ...live };
}
