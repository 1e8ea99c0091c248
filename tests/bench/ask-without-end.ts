import { Agent, request } from "node:https";
import type { TwoBehindAProxy } from "#tests/support/two-behind-a-proxy.ts";

/** What clients saw. */
export interface Seen {
  /** Answered requests, by what was asked. */
  readonly answered: Record<string, number>;
  /** What failed, in words. */
  readonly failed: string[];
  /** Milliseconds, of answered requests. */
  readonly times: number[];
  /** Ids of examinations of which the client was told that they are kept. */
  readonly kept: Set<string>;
}

interface Ask {
  readonly what: string;
  readonly method: "GET" | "POST";
  readonly path: string;
  readonly body?: string;
}

const graphql = (what: string, query: string, variables?: object): Ask => ({
  what,
  method: "POST",
  path: "/graphql",
  body: JSON.stringify({ query, variables }),
});

const PIECE = {
  title: "A chest made up for a measurement",
  invented: true,
  examined: 2026,
  attribution: { date: "1760/1775", region: "region.england", form: "form.chest" },
  parts: [{ id: "carcase", label: "Carcase" }],
  observations: [],
};

/** Of ten requests: five reads of the API, two pages, three new examinations. */
const ASKS: readonly Ask[] = [
  graphql("read", '{ node(id: "region.england") { id } }'),
  { what: "page", method: "GET", path: "/" },
  graphql("write", BEGIN(), { piece: PIECE }),
  graphql("read", "{ examinations(first: 5) { totalCount } }"),
  graphql("read", '{ node(id: "form.chest") { id } }'),
  graphql("write", BEGIN(), { piece: PIECE }),
  { what: "page", method: "GET", path: "/terms/tool.circular-saw" },
  graphql("read", "{ examinations(first: 5) { totalCount } }"),
  graphql("write", BEGIN(), { piece: PIECE }),
  graphql("read", '{ node(id: "region.london") { id } }'),
];

function BEGIN(): string {
  return "mutation ($piece: PieceInput!) { createExamination(piece: $piece) { __typename ... on ExaminationChanged { examination { id } } } }";
}

/** Clients that ask one request after the other until `stop`; nothing is asked again. */
export function askWithoutEnd(
  two: TwoBehindAProxy,
  clients: number,
): { readonly seen: Seen; stop(): Promise<void> } {
  const seen: Seen = { answered: {}, failed: [], times: [], kept: new Set() };
  const agent = new Agent({ keepAlive: true, maxSockets: clients, ca: two.certificate });
  let isOver = false;
  const client = async (first: number): Promise<void> => {
    for (let n = first; !isOver; n++) await askOne(two, agent, ASKS[n % ASKS.length] as Ask, seen);
  };
  const all = Array.from({ length: clients }, (_, n) => client(n * 3));
  return {
    seen,
    stop: async () => {
      isOver = true;
      await Promise.all(all);
      agent.destroy();
    },
  };
}

async function askOne(two: TwoBehindAProxy, agent: Agent, ask: Ask, seen: Seen): Promise<void> {
  const begun = performance.now();
  try {
    const { status, text } = await send(two, agent, ask);
    if (status !== 200) throw new Error(`status ${status}`);
    if (ask.method === "POST") {
      const { data, errors } = JSON.parse(text) as {
        data?: { createExamination?: { examination?: { id: string } } };
        errors?: readonly { readonly message: string }[];
      };
      if (errors) throw new Error(errors[0]?.message);
      const id = data?.createExamination?.examination?.id;
      if (ask.what === "write" && id === undefined) throw new Error(text);
      if (id) seen.kept.add(id);
    }
    seen.answered[ask.what] = (seen.answered[ask.what] ?? 0) + 1;
    seen.times.push(performance.now() - begun);
  } catch (error) {
    seen.failed.push(`${ask.what}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function send(
  { port, host, authorization }: TwoBehindAProxy,
  agent: Agent,
  { method, path, body }: Ask,
): Promise<{ readonly status: number; readonly text: string }> {
  return new Promise((resolve, reject) => {
    const headers = {
      Host: `${host}:${port}`,
      Origin: `https://${host}:${port}`,
      Authorization: authorization,
      ...(body ? { "Content-Type": "application/json", "Content-Length": Buffer.byteLength(body) } : {}),
    };
    const sending = request(
      { host: "127.0.0.1", servername: host, port, method, path, headers, agent },
      (response) => {
        let text = "";
        response.setEncoding("utf8").on("data", (chunk: string) => {
          text += chunk;
        });
        response.once("end", () => resolve({ status: response.statusCode ?? 0, text }));
        response.once("error", reject);
      },
    );
    sending.once("error", reject);
    sending.end(body);
  });
}
