import { STATUS_CODES } from "node:http";
import type { Duplex } from "node:stream";

/** Answers a request for a live connection that is not taken, in the form of all errors, and closes. */
export function refuseUpgrade(socket: Duplex, status: number, code: string, message: string): void {
  const body = `${JSON.stringify({ errors: [{ message, extensions: { code } }] })}\n`;
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
