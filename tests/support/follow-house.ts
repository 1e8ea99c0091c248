import type { Socket } from "./open-socket.ts";

export interface Heard {
  readonly sequence: number;
  readonly id?: string;
  readonly version?: number;
}
export interface Follower {
  /** All that was told, in the order in which it came. */
  readonly heard: readonly Heard[];
  /** Why each connection that is over was closed. */
  readonly closings: readonly number[];
  /** Tries to connect that were refused or came to nothing. */
  readonly failures: number;
  /** Milliseconds between the loss of a connection and the first telling over the next, the longest. */
  readonly longestGap: number;
  readonly stop: () => void;
}

const NEWS = `subscription ($since: Int) { news(since: $since, kinds: [EXAMINATION]) {
  sequence readAnew changes { ... on ExaminationNews { sequence id version } } } }`;
/** Milliseconds before the second try, twice as many before each next. */
const FIRST_PAUSE = 250;
const LONGEST_PAUSE = 4000;

/**
 * Follows the examinations of a house as a page does: connects again whenever the connection is lost, at once elsewhere or after a while,
 * and goes on from what it knows. Resolves when it was told of the first.
 */
export async function followHouse(connect: () => Promise<Socket>): Promise<Follower> {
  const heard: Heard[] = [];
  const closings: number[] = [];
  let since: number | undefined;
  let isOver = false;
  let socket: Socket | undefined;
  const follower = {
    ...{ heard, closings, failures: 0, longestGap: 0 },
    stop: () => {
      isOver = true;
      socket?.close();
    },
  };
  const begun = Promise.withResolvers<void>();
  let lostAt: number | undefined;
  const once = async (): Promise<void> => {
    const own = await connect();
    socket = own;
    own.subscribe("news", NEWS, since === undefined ? {} : { since });
    try {
      for (;;) {
        const { payload } = await own.next();
        const { sequence, changes, readAnew } = payload.data.news;
        if (readAnew) throw new Error("Too much was missed");
        if (lostAt !== undefined)
          follower.longestGap = Math.max(follower.longestGap, performance.now() - lostAt);
        lostAt = undefined;
        since = sequence;
        heard.push(...changes);
        begun.resolve();
      }
    } catch {
      own.close();
      closings.push((await own.closed).code);
    }
  };
  const run = async (): Promise<void> => {
    for (let tries = 0; !isOver; tries++) {
      const before = closings.length;
      await once().catch(() => {
        follower.failures++;
      });
      if (isOver) return;
      lostAt ??= performance.now();
      if (closings.length > before) tries = 0;
      const pause = Math.min(FIRST_PAUSE * 2 ** tries, LONGEST_PAUSE);
      await new Promise((resolve) => setTimeout(resolve, pause * (0.5 + Math.random() / 2)));
    }
  };
  void run();
  await begun.promise;
  return follower;
}
