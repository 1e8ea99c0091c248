import type { Server } from "node:http";
import { closeGently } from "./close-gently.ts";

export interface Ending {
  readonly hasBegun: () => boolean;
  /**
   * Goes on answering for `drain` milliseconds, so that whoever sends requests here sees that it is to send them elsewhere;
   * then takes no more connections, lets requests under way end, and closes the rest. Once more without a drain cuts it short.
   */
  begin(drain: number): Promise<void>;
}

/** How a server ends; `closeLive` cuts off live connections, `closeRest` is called when nothing is under way any more. */
export function endGently(
  server: Server,
  closeRest: () => Promise<void>,
  closeLive: () => Promise<void> = async () => {},
): Ending {
  const drained = Promise.withResolvers<void>();
  let ended: Promise<void> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    hasBegun: () => ended !== undefined,
    begin: (drain) => {
      if (drain === 0) drained.resolve();
      ended ??= drained.promise.then(async () => {
        clearTimeout(timer);
        await Promise.all([closeLive(), closeGently(server)]);
        await closeRest();
      });
      timer ??= setTimeout(drained.resolve, drain);
      return ended;
    },
  };
}
