import { useState } from "react";
import { newComments, newsInWords, type SeenTalk } from "./news-in-words.ts";

interface TalkNews {
  /** What others did last, as a sentence or more. */
  readonly told: string;
  /** Ids of what others said since the page was opened. */
  readonly fresh: ReadonlySet<string>;
}

/** What others did since the page was opened, by what is seen of it each time it is read; nothing before it was read once. */
export function useTalkNews(seen: SeenTalk | undefined): TalkNews {
  const [before, setBefore] = useState(seen);
  const [news, setNews] = useState<TalkNews>({ told: "", fresh: new Set() });
  if (seen === undefined || seen === before) return news;
  setBefore(seen);
  const words = before === undefined ? [] : newsInWords(before, seen);
  if (before === undefined || words.length === 0) return news;
  const others = newComments(before, seen).filter(({ isMine }) => !isMine);
  setNews({ told: words.join(" "), fresh: new Set([...news.fresh, ...others.map(({ id }) => id)]) });
  return news;
}
