import type { Server } from "node:http";

/** Milliseconds that requests under way are given to end. */
const PATIENCE = 8000;

/** Takes no more connections, lets requests under way end, then cuts off what is left. */
export function closeGently(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    const last = setTimeout(() => server.closeAllConnections(), PATIENCE);
    server.close((error) => {
      clearTimeout(last);
      if (error) reject(error);
      else resolve();
    });
    server.closeIdleConnections();
  });
}
