import { useState } from "react";
import { useNews } from "../shared/live/use-news.ts";
import { listNewsInWords, type SeenList } from "./list-news-in-words.ts";

const MORE = 20;
const AT_MOST = 200;

/**
 * Keeps a list up with what others do. `read` reads its first rows: as many as are shown and some more, so that none is lost from
 * it by what comes in. `seen` is the list as it stands, the same object while nothing of it differs.
 */
export function useListNews(seen: SeenList, read: (first: number) => Promise<unknown>) {
  const [before, setBefore] = useState(seen);
  const [told, setTold] = useState("");
  const { isLost } = useNews({ read: () => read(Math.min(seen.rows.length + MORE, AT_MOST)) });
  if (seen !== before) {
    setBefore(seen);
    const words = listNewsInWords(before, seen);
    if (words.length > 0) setTold(words.join(" "));
  }
  return { told, isLost };
}
