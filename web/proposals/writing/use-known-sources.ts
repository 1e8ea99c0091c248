import { useApolloClient } from "@apollo/client/react";
import { useEffect, useState } from "react";
import type { CslItem } from "#server/domain/source.ts";
import { readAllSources } from "#web/shared/sources/read-all-sources.ts";

/** All sources there are, once they are read; none before, and where they cannot be read. */
export function useKnownSources(): readonly CslItem[] {
  const client = useApolloClient();
  const [found, setFound] = useState<readonly CslItem[]>([]);
  useEffect(() => {
    let isLeft = false;
    readAllSources(client)
      .catch(() => [])
      .then((items) => {
        if (!isLeft) setFound(items);
      });
    return () => {
      isLeft = true;
    };
  }, [client]);
  return found;
}
