import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { type Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import type { Config } from "#server/config.ts";
import type { Change } from "#server/domain/change.ts";
import { startServer } from "#server/main.ts";
import type { Log } from "#server/ports/log.ts";
import { tablesOf } from "#server/ports/reference-tables.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";

/** A folder that looks like a built web client. */
function builtClient(): string {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-web-"));
  mkdirSync(join(folder, "assets"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>Scribeline</title>");
  writeFileSync(join(folder, "assets/main-abc123.js"), "export {};");
  writeFileSync(join(folder, "assets/main-abc123.js.gz"), gzipSync("export {};"));
  writeFileSync(join(folder, "assets/main-abc123.js.br"), brotliCompressSync("export {};"));
  const ahead = [{ path: "^/terms/[^/]+$", files: ["/assets/term-abc123.js", "/assets/main-abc123.js"] }];
  writeFileSync(join(folder, "ahead.json"), JSON.stringify(ahead));
  writeFileSync(join(folder, "operations.json"), JSON.stringify(["BeginPiece", "StartPage"]));
  return folder;
}

/** A server on a free port over a store in memory, with a small web client, ready unless not `untilBuilt`; `stop` takes both away. */
export async function openHttp(
  changes: readonly Change[],
  settings: Partial<Config> = {},
  store: Store = openMemoryStore(),
  { untilBuilt = true } = {},
) {
  for (const change of changes)
    await store.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" });
  const logged: Parameters<Log>[0][] = [];
  const webFolder = builtClient();
  const dataFolder = mkdtempSync(join(tmpdir(), "scribeline-data-"));
  const config: Config = {
    ...{
      address: "127.0.0.1",
      accounts: false,
      port: 0,
      origins: [],
      dataFolder,
      webFolder,
      largestBody: 256_000,
      deadline: 10_000,
      highestCost: 10_000,
      followEvery: 20,
      longestWait: 200,
      drain: 0,
      backups: { hours: 24, keep: 7 },
      mirror: true,
    },
    ...settings,
  };
  const server = await startServer({
    config,
    store,
    tables: tablesOf([]),
    log: (line) => logged.push(line),
  });
  if (untilBuilt) await server.built;
  return {
    url: server.url,
    logged,
    stop: async (drain?: number) => {
      await server.stop(drain);
      for (const folder of [webFolder, dataFolder]) rmSync(folder, { recursive: true, force: true });
    },
  };
}

export interface Sent {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
  /** As it came over the wire. */
  readonly bytes: Buffer;
}

/** Sends a request with exactly these headers, `Host` and `Origin` too, which fetch would not let through. */
export function send(
  url: string,
  options: { method?: string; headers?: Record<string, string>; body?: string | Buffer; agent?: Agent } = {},
): Promise<Sent> {
  return new Promise((resolve, reject) => {
    const { method = "GET", headers = {}, body, agent = false } = options;
    const sending = request(url, { method, headers, agent }, (response) => {
      const chunks: Buffer[] = [];
      response.on("data", (chunk: Buffer) => chunks.push(chunk));
      response.on("end", () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          text: Buffer.concat(chunks).toString(),
          bytes: Buffer.concat(chunks),
        }),
      );
    });
    sending.on("error", reject);
    sending.end(body);
  });
}

/** Sends a GraphQL operation as a browser's page of ours would. */
export const post = (url: string, body: unknown, headers: Record<string, string> = {}): Promise<Sent> =>
  send(`${url}graphql`, {
    method: "POST",
    headers: { "Content-Type": "application/json", ...headers },
    body: typeof body === "string" || Buffer.isBuffer(body) ? body : JSON.stringify(body),
  });
