import { useQuery } from "@apollo/client/react";
import { readRows } from "../shared/apollo/read-rows.ts";
import { DiscussionDocument, type DiscussionQuery } from "./Discussion.graphql.ts";
import { rowsToFollow } from "./rows-to-follow.ts";

const AT_ONCE = 50;

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
  const shown = { rows: data?.comments.edges.length ?? 0, count: data?.comments.totalCount ?? 0 };
  return {
    comments: data?.comments,
    readOn: (after) => fetchMore({ variables: { after } }),
    readAgain: () => readRows(client, DiscussionDocument, { on }, "comments", rowsToFollow(shown, AT_ONCE)),
  };
}
