import { openLiveSocket } from "#tests/support/open-socket.ts";

const NEWS = `subscription ($since: Int) { news(since: $since, kinds: [EXAMINATION]) {
  sequence hasMore readAnew changes { ... on ExaminationNews { sequence id version } } } }`;

export interface Change {
  readonly sequence: number;
  readonly id: string;
  readonly version: number;
}
export interface NewsMessage {
  readonly sequence: number;
  readonly hasMore: boolean;
  readonly readAnew: boolean;
  readonly changes: readonly Change[];
}

/** Follows what is stored, until it is closed; resolves when the first was told. What is told out of order, twice or not at all is counted. */
export async function follow(url: string, take: (news: NewsMessage) => void, since?: number) {
  const socket = await openLiveSocket(url);
  const versions = new Map<string, number>();
  let last = since ?? 0;
  let faults = 0;
  let isOver = false;
  socket.subscribe("1", NEWS, since === undefined ? {} : { since });
  const next = async (): Promise<void> => {
    const { type, payload } = await socket.next();
    if (type !== "next" || payload.errors) throw new Error(JSON.stringify(payload));
    const news = payload.data.news as NewsMessage;
    for (const { sequence, id, version } of news.changes) {
      const before = versions.get(id);
      if (sequence <= last || (before !== undefined && version !== before + 1)) faults++;
      last = sequence;
      versions.set(id, version);
    }
    take(news);
  };
  await next();
  const run = async (): Promise<void> => {
    while (!isOver)
      await next().catch(() => {
        if (!isOver) faults++;
        isOver = true;
      });
  };
  void run();
  return {
    versions,
    faults: () => faults,
    close: async () => {
      isOver = true;
      socket.close();
      await socket.closed;
    },
  };
}
export type Follower = Awaited<ReturnType<typeof follow>>;
