import type { ApolloClient } from "@apollo/client";
import { useApolloClient } from "@apollo/client/react";
import { useEffect, useRef, useState } from "react";
import type { NewsKind } from "../apollo/schema-types.graphql.ts";
import { AsOfRevisionDocument } from "../ui/AsOfRevision.graphql.ts";
import { NewsDocument } from "./News.graphql.ts";
import { readInTurn } from "./read-in-turn.ts";
import { useLiveConnection } from "./use-live-connection.ts";

interface Followed {
  /** A proposal or a dispute; without it all of them. */
  readonly about?: string;
  /** The revisions of the graph as well. */
  readonly withGraph?: boolean;
  /** Reads what the page shows anew, so that what stands on it follows. */
  readonly read: () => Promise<unknown>;
}

/**
 * Reads a page anew when the server tells that something of it was changed, by whomever: also what was changed between the reading
 * of the page and the first that is told. Gives whether the connection is lost, and the newest revision that was told.
 */
export function useNews({ about, withGraph = false, read }: Followed): {
  readonly isLost: boolean;
  readonly revision: number | undefined;
} {
  const live = useLiveConnection();
  const client = useApolloClient();
  const [isLost, setLost] = useState(false);
  const [revision, setRevision] = useState<number>();
  const reading = useRef(read);
  useEffect(() => {
    reading.current = read;
  });
  useEffect(() => {
    let since: number | undefined;
    const readAgain = readInTurn(() => reading.current());
    const kinds: readonly NewsKind[] = withGraph ? ["PROPOSAL", "GRAPH"] : ["PROPOSAL"];
    return live?.follow({
      document: NewsDocument,
      variables: () => ({ about: about ?? null, kinds, since: since ?? null }),
      tell: (state) => state === "lost" && setLost(true),
      take: ({ news }) => {
        if (since === undefined || news.readAnew || news.changes.length > 0) readAgain();
        since = news.sequence;
        const told = news.changes.flatMap((change) => ("revision" in change ? [change.revision] : [])).at(-1);
        if (told !== undefined) {
          setRevision(told);
          void readNewest(client);
        }
        if (!news.hasMore) setLost(false);
      },
    });
  }, [live, client, about, withGraph]);
  return { isLost, revision };
}

/** The top of the page names the newest revision; it is read anew at the next news where it cannot be now. */
const readNewest = (client: ApolloClient): Promise<unknown> =>
  client
    .query({
      query: AsOfRevisionDocument,
      variables: { asked: null, isAsked: false },
      fetchPolicy: "network-only",
    })
    .catch(() => undefined);
