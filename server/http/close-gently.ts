import type { Server } from "node:http";

/** Milliseconds that requests under way are given to end. */
const PATIENCE = 8000;
/** Milliseconds between two looks for connections that have become idle. */
const LOOK_AGAIN = 50;

/** Takes no more connections, lets requests under way end, then cuts off what is left. */
export function closeGently(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    // A connection that is kept alive outlives its last request; it is idle then.
    const idle = setInterval(() => server.closeIdleConnections(), LOOK_AGAIN);
    const last = setTimeout(() => server.closeAllConnections(), PATIENCE);
    server.close((error) => {
      clearInterval(idle);
      clearTimeout(last);
      if (error) reject(error);
      else resolve();
    });
    server.closeIdleConnections();
  });
}
