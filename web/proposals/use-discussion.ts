import { useQuery } from "@apollo/client/react";
import { DiscussionDocument, type DiscussionQuery } from "./Discussion.graphql.ts";

const AT_ONCE = 50;
const AT_MOST = 200;

/** What was said of a proposal or a dispute, and how it is read on and read anew. */
export interface Talk {
  readonly comments: DiscussionQuery["comments"] | undefined;
  readonly readOn: (after: string | null) => Promise<unknown>;
  /** As much as is shown, and what was said since. */
  readonly readAgain: () => Promise<unknown>;
}

/** Reads what was said of a proposal or a dispute, page by page. */
export function useDiscussion(on: string): Talk {
  const { data, fetchMore, client } = useQuery(DiscussionDocument, {
    variables: { on, first: AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const shown = data?.comments.edges.length ?? 0;
  return {
    comments: data?.comments,
    readOn: (after) => fetchMore({ variables: { after } }),
    readAgain: () =>
      client.query({
        query: DiscussionDocument,
        variables: { on, first: Math.min(Math.max(AT_ONCE, shown + AT_ONCE), AT_MOST) },
        fetchPolicy: "network-only",
      }),
  };
}
