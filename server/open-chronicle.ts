import type { IncomingMessage } from "node:http";
import { answerChronicle, refused, withNames } from "./api/chronicle/answer-chronicle.ts";
import type { ChroniclePorts } from "./api/chronicle/chronicle-actions.ts";
import { printAtom } from "./api/chronicle/print-atom.ts";
import { isProblem } from "./domain/problem.ts";
import type { Chronicle } from "./http/serve-chronicle.ts";
import type { serveFeed } from "./http/serve-feed.ts";
import type { Progress } from "./ports/progress.ts";
import type { Verify } from "./ports/verify.ts";
import { refuseCaller } from "./use-cases/acting.ts";
import { type Proven, proveHistory } from "./use-cases/chronicle/prove-history.ts";
import { readFeed } from "./use-cases/chronicle/read-feed.ts";
import { isRefusal } from "./use-cases/refusal.ts";

/** Milliseconds between two words on how far a proof has come. */
const EVERY = 200;

/**
 * The history of the house and its proof, for requests. One proof at a time runs in a process: who asks for one meanwhile is told
 * of that one.
 */
export function openChronicle(
  verify: Verify,
  portsOf: (request: IncomingMessage) => Promise<ChroniclePorts>,
): Chronicle & { readonly feed: Parameters<typeof serveFeed>[0] } {
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
  const refuse = async (ports: ChroniclePorts) => {
    const refusal = refuseCaller(ports, "read the graph");
    return refusal && refused(refusal.refused);
  };
  return {
    refuse: async (request) => refuse(await portsOf(request)),
    answer: async (request, action, value) => answerChronicle(await portsOf(request), action, value),
    feed: async (request, asked, origin) => {
      const ports = await portsOf(request);
      const feed = await readFeed(withNames(ports), asked);
      if (isRefusal(feed)) return feed;
      const text = printAtom(feed, origin);
      return { text, hash: ports.seals.hash(text), updated: feed.updated };
    },
    prove: async (request, tell) => {
      const ports = await portsOf(request);
      const refusal = await refuse(ports);
      if (refusal) return refusal;
      listeners.add(tell);
      try {
        tell({ progress: "Begun" });
        running ??= begin(ports);
        const proven: Proven | object = await running;
        tell(isProblem(proven) ? { broken: proven } : { proven });
      } finally {
        listeners.delete(tell);
      }
      return undefined;
    },
  };
}
