import type { IncomingMessage } from "node:http";

/** The body as text; what is not UTF-8, or longer than `largest` bytes, is said instead. */
export async function readBody(
  request: IncomingMessage,
  largest: number,
): Promise<{ readonly text: string } | "too large" | "not UTF-8"> {
  if (Number(request.headers["content-length"] ?? 0) > largest) return "too large";
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length;
    if (length > largest) return "too large";
    chunks.push(chunk);
  }
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(chunks)) };
  } catch {
    return "not UTF-8";
  }
}
