import { STATUS_CODES } from "node:http";
import type { Duplex } from "node:stream";

/** Milliseconds that the answer may take to be taken. */
const LONGEST = 5_000;

/** Answers a request for a live connection that is not taken, in the form of all errors, and closes. */
export function refuseUpgrade(socket: Duplex, status: number, code: string, message: string): void {
  const body = `${JSON.stringify({ errors: [{ message, extensions: { code } }] })}\n`;
  // Nobody else ends what the other side leaves half open, or sends nothing more on.
  socket.once("finish", () => socket.destroy());
  setTimeout(() => socket.destroy(), LONGEST).unref();
  socket.resume();
  socket.end(
    [
      `HTTP/1.1 ${status} ${STATUS_CODES[status]}`,
      "Connection: close",
      "Content-Type: application/json; charset=utf-8",
      "Cache-Control: no-store",
      `Content-Length: ${Buffer.byteLength(body)}`,
      "",
      body,
    ].join("\r\n"),
  );
}
