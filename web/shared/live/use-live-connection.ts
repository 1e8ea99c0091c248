import { useEffect, useState } from "react";
import { type Live, useLiveSource } from "./live.ts";

/** The connection of the page, once it is fetched; nothing where nothing is told. */
export function useLiveConnection(): Live | undefined {
  const source = useLiveSource();
  const [live, setLive] = useState<Live>();
  useEffect(() => {
    let isWanted = true;
    void source?.().then((opened) => isWanted && setLive(() => opened));
    return () => {
      isWanted = false;
    };
  }, [source]);
  return live;
}
