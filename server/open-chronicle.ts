import type { IncomingMessage } from "node:http";
import { answerChronicle, refused, withNames } from "./api/chronicle/answer-chronicle.ts";
import type { ChroniclePorts } from "./api/chronicle/chronicle-actions.ts";
import { lineUp } from "./api/chronicle/line-up.ts";
import { printAtom } from "./api/chronicle/print-atom.ts";
import type { Caller } from "./domain/people/caller.ts";
import { mayDo } from "./domain/people/may-do.ts";
import { isProblem, problem } from "./domain/problem.ts";
import type { Chronicle } from "./http/serve-chronicle.ts";
import type { serveFeed } from "./http/serve-feed.ts";
import type { Progress } from "./ports/progress.ts";
import type { Verify } from "./ports/verify.ts";
import { type Proven, proveHistory } from "./use-cases/chronicle/prove-history.ts";
import { readFeed } from "./use-cases/chronicle/read-feed.ts";
import { isRefusal } from "./use-cases/refusal.ts";

/** Milliseconds between two words on how far a proof has come. */
const EVERY = 200;

/** What the chronicle of a server stands on. */
export interface Founds {
  readonly verify: Verify;
  readonly callerOf: (request: IncomingMessage) => Promise<Caller | undefined>;
  /** The ports of a caller, whose store is given up at the deadline of one request, counted from now. */
  readonly portsOf: (caller: Caller | undefined) => ChroniclePorts;
  /** The same for what goes on as long as it takes. */
  readonly lastingPortsOf: (caller: Caller | undefined) => ChroniclePorts;
}

/**
 * The history of the house and its proof, for requests. One proof at a time runs in a process: who asks for one meanwhile is told
 * of that one. What reads much waits in a line.
 */
export function openChronicle({ verify, callerOf, portsOf, lastingPortsOf }: Founds): {
  readonly open: (request: IncomingMessage) => Promise<Chronicle>;
  readonly feed: Parameters<typeof serveFeed>[0];
} {
  const inLine = lineUp();
  let running: ReturnType<typeof proveHistory> | undefined;
  const listeners = new Set<(line: object) => void>();
  const begin = ({ store, seals }: ChroniclePorts): ReturnType<typeof proveHistory> => {
    let last = 0;
    const tell: Progress = (words) => {
      if (performance.now() - last < EVERY) return;
      last = performance.now();
      for (const listener of listeners) listener({ progress: words() });
    };
    return proveHistory({ store, seals, verify }, tell).finally(() => {
      running = undefined;
    });
  };
  const prove = async (caller: Caller | undefined, tell: (line: object) => void): Promise<void> => {
    listeners.add(tell);
    try {
      tell({ progress: "Begun" });
      running ??= begin(lastingPortsOf(caller));
      const proven: Proven | object = await running;
      tell(isProblem(proven) ? { broken: proven } : { proven });
    } finally {
      listeners.delete(tell);
    }
  };
  return {
    open: async (request) => {
      const caller = await callerOf(request);
      const forbidden = mayDo(caller, "read the graph");
      const unable = forbidden && refused([forbidden]);
      return {
        refused: unable,
        answer: async (action, value) => {
          const ports = portsOf(caller);
          const answer = () => answerChronicle(ports, action, value);
          if (caller === undefined || unable !== undefined) return answer();
          const answered = await inLine(action, caller, answer);
          return answered === "busy"
            ? { status: 503, body: { refused: [tooMany] }, retryAfter: 1 }
            : answered;
        },
        prove: async (tell) => {
          if (unable === undefined) await prove(caller, tell);
          return unable;
        },
      };
    },
    feed: async (request, asked, origin) => {
      const caller = await callerOf(request);
      const ports = portsOf(caller);
      const read = () => readFeed(withNames(ports), asked);
      const feed = caller === undefined ? await read() : await inLine("feed", caller, read);
      if (feed === "busy") return { refused: [tooMany] };
      if (isRefusal(feed)) return feed;
      const text = printAtom(feed, origin);
      return { text, hash: ports.seals.hash(text), updated: feed.updated };
    },
  };
}

const tooMany = problem("TRY_LATER", "Too much is asked for at once. Try again in a second.");
