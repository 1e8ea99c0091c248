import { useApolloClient } from "@apollo/client/react";
import { useEffect, useRef, useState } from "react";
import type { LiveState } from "#web/shared/live/live.ts";
import { useLiveConnection } from "#web/shared/live/use-live-connection.ts";
import {
  ExaminationNewsDocument,
  ExaminationPresenceDocument,
  ExaminationVersionDocument,
  type OtherPresentFragment,
} from "./Live.graphql.ts";

export interface LiveExamination {
  /** Undefined where nothing is told, or nothing yet. */
  readonly state: LiveState | "catching up" | undefined;
  readonly others: readonly OtherPresentFragment[];
  readonly count: number;
}
interface Here {
  readonly id: string;
  readonly part: string | undefined;
  readonly isEditing: boolean;
  /** Told of each version that is stored. */
  readonly heard: (version: number) => void;
  /** Told when a connection that was lost is back. */
  readonly onBack: () => void;
}

/** Milliseconds that what one does here has to last before the others are told. */
const SETTLED = 300;

/** Follows what others do with an examination, and tells them what is done here. */
export function useLive({ id, part, isEditing, heard, onBack }: Here): LiveExamination {
  const live = useLiveConnection();
  const client = useApolloClient();
  const [state, setState] = useState<LiveExamination["state"]>();
  const [present, setPresent] = useState<Pick<LiveExamination, "others" | "count">>({ others: [], count: 0 });
  const back = useRef(onBack);
  useEffect(() => {
    back.current = onBack;
  });

  useEffect(() => {
    let since: number | undefined;
    let wasLost = false;
    const readVersion = async () => {
      const { data } = await client
        .query({ query: ExaminationVersionDocument, variables: { id }, fetchPolicy: "no-cache" })
        .catch(() => ({ data: undefined }));
      if (data?.examination) heard(data.examination.version);
    };
    return live?.follow({
      document: ExaminationNewsDocument,
      variables: () => ({ id, since: since ?? null }),
      tell: (told) => {
        if (told === "lost") {
          wasLost = true;
          setState("lost");
        }
      },
      take: ({ news }) => {
        // What was stored between the page and the first that it is told, and what was too much to tell.
        if (since === undefined || news.readAnew) void readVersion();
        since = news.sequence;
        for (const { version } of news.changes as readonly { readonly version?: number }[])
          if (version !== undefined) heard(version);
        setState(news.hasMore ? "catching up" : "live");
        if (wasLost && !news.hasMore) {
          wasLost = false;
          back.current();
        }
      },
    });
  }, [live, client, id, heard]);

  useEffect(() => {
    let end = () => {};
    const timer = setTimeout(() => {
      end =
        live?.follow({
          document: ExaminationPresenceDocument,
          variables: () => ({ id, part: part ?? null, isEditing }),
          tell: (told) => told === "lost" && setPresent({ others: [], count: 0 }),
          take: ({ presence }) => setPresent(presence),
        }) ?? end;
    }, SETTLED);
    return () => {
      clearTimeout(timer);
      // The next place is taken before this one is left, so that the others do not see one go and come.
      setTimeout(() => end(), 2 * SETTLED);
    };
  }, [live, id, part, isEditing]);

  return { state, ...present };
}
