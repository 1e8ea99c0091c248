import type { Server } from "graphql-ws";
import type { WebSocket } from "ws";
import { limitRate } from "./limit-rate.ts";

/** Messages and pings that a client may send in a second. */
const MOST_MESSAGES = 20;
/** Milliseconds between two pings; who does not answer until the next is gone. */
const PING_EVERY = 15_000;

/** Why a live connection was closed; 4400 and the like are those of the protocol. */
export const CLOSED = {
  restart: [1012, "Told to stop; connect again"],
  unexpected: [1011, "Something went wrong here"],
  changed: [4403, "Signed out, or with another role: connect again"],
  flood: [4429, "Too many messages"],
} as const satisfies Record<string, readonly [number, string]>;

/** Runs the protocol over one open socket, within its limits. */
export function runSocket<Extra>(
  protocol: Server<Extra>,
  socket: WebSocket,
  extra: Extra,
  onDefect: (failure: unknown) => void,
): void {
  const isAllowed = limitRate(MOST_MESSAGES, () => performance.now());
  const close = (why: keyof typeof CLOSED) => {
    const [code, reason] = CLOSED[why];
    socket.close(code, reason);
  };
  const count = (): boolean => {
    if (isAllowed()) return true;
    close("flood");
    // One that goes on sending is not waited for.
    socket.pause();
    setTimeout(() => socket.terminate(), 100);
    return false;
  };
  let isAlive = true;
  const ping = setInterval(() => {
    if (!isAlive) return socket.terminate();
    isAlive = false;
    socket.ping();
  }, PING_EVERY);
  socket.on("pong", () => {
    isAlive = true;
  });
  socket.on("ping", count);
  // What breaks the rules of WebSocket, or is too long, is closed by the library with a code of its own.
  socket.on("error", () => socket.terminate());
  const closed = protocol.opened(
    {
      protocol: socket.protocol,
      send: (data) =>
        new Promise((resolve) => {
          if (socket.readyState !== socket.OPEN) return resolve();
          // What cannot be sent any more is followed by `close`.
          socket.send(data, () => resolve());
        }),
      close: (code, reason) => socket.close(code, reason),
      onMessage: (take) => {
        socket.on("message", (data, isBinary) => {
          if (socket.readyState !== socket.OPEN || !count()) return;
          if (isBinary) return socket.close(1003, "Text is expected");
          take(String(data)).catch((failure: unknown) => {
            onDefect(failure);
            close("unexpected");
          });
        });
      },
    },
    extra,
  );
  socket.once("close", (code, reason) => {
    clearInterval(ping);
    closed(code, String(reason)).catch(onDefect);
  });
}
