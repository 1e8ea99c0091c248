import type { IncomingMessage, ServerResponse } from "node:http";

/** Answers one request. */
export type Handler = (request: IncomingMessage, response: ServerResponse) => Promise<void> | void;

/** Answers with JSON that no cache keeps. */
export function answerJson(response: ServerResponse, status: number, body: unknown): void {
  response.writeHead(status, {
    "Content-Type": "application/json; charset=utf-8",
    "Cache-Control": "no-store",
  });
  response.end(`${JSON.stringify(body)}\n`);
}

/** Answers with an error in the form of GraphQL over HTTP, whatever was asked for. */
export const answerError = (response: ServerResponse, status: number, code: string, message: string): void =>
  answerJson(response, status, { errors: [{ message, extensions: { code } }] });
