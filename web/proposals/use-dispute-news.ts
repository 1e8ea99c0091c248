import { useApolloClient } from "@apollo/client/react";
import { useMemo } from "react";
import { useNews } from "../shared/live/use-news.ts";
import { type DisputeFieldsFragment, DisputePageDocument } from "./DisputePage.graphql.ts";
import type { SeenTalk } from "./news-in-words.ts";
import { useDiscussion } from "./use-discussion.ts";
import { useTalkNews } from "./use-talk-news.ts";

/** Keeps an open dispute and its talk up with what others do, and says what they did. */
export function useDisputeNews(dispute: DisputeFieldsFragment) {
  const { id } = dispute;
  const client = useApolloClient();
  const talk = useDiscussion(id);
  const { comments } = talk;
  const seen = useMemo((): SeenTalk | undefined => {
    if (comments === undefined) return undefined;
    const { version, isMine, decision } = dispute;
    const said = comments.edges.map(({ node }) => node);
    const ended = decision === null ? {} : { ended: decision };
    return { version, isMine, reviews: [], ...ended, comments: said, commentCount: comments.totalCount };
  }, [dispute, comments]);
  const news = useTalkNews(seen);
  const { isLost } = useNews({
    about: id,
    read: () =>
      Promise.all([
        client.query({ query: DisputePageDocument, variables: { id }, fetchPolicy: "network-only" }),
        talk.readAgain(),
      ]),
  });
  return { talk, ...news, isLost };
}
