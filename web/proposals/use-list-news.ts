import { useState } from "react";
import { useNews } from "../shared/live/use-news.ts";
import { listNewsInWords, type SeenList } from "./list-news-in-words.ts";
import { rowsToFollow } from "./rows-to-follow.ts";

const MORE = 20;

/**
 * Keeps a list up with what others do. `read` reads its first rows, as many as are wanted by how many there are. `seen` is the list as it stands, the same object while nothing of it differs.
 */
export function useListNews(seen: SeenList, read: (wanted: (count: number) => number) => Promise<unknown>) {
  const [before, setBefore] = useState(seen);
  const [told, setTold] = useState("");
  const { isLost } = useNews({
    read: () => read(rowsToFollow({ rows: seen.rows.length, count: seen.count }, MORE)),
  });
  if (seen !== before) {
    setBefore(seen);
    const words = listNewsInWords(before, seen);
    if (words.length > 0) setTold(words.join(" "));
  }
  return { told, isLost };
}
