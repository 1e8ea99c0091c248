import { mkdtempSync, rmSync } from "node:fs";
import { Agent } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { send } from "#tests/support/open-http.ts";
import { startServerProcess } from "#tests/support/server-process.ts";

/** What is seen on the one part of the pieces here, by id, with what is noted of it. */
export type Notes = ReadonlyMap<string, string>;
export interface Version {
  readonly id: string;
  readonly version: number;
  readonly notes: Notes;
}

const READ = "version piece { observations { id note } }";
const KEPT = `{ __typename ... on ExaminationChanged { examination { id ${READ} } } ... on Refused { problems { code message } } }`;
const CREATE = `mutation ($piece: PieceInput!) { done: createExamination(piece: $piece) ${KEPT} }`;
const CHANGE = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  done: changeExamination(id: $id, expectedVersion: $on, piece: $piece) ${KEPT} }`;
const FIND = `query ($id: ID!) { examination(id: $id) { id ${READ} } }`;

interface Given {
  readonly id: string;
  readonly version: number;
  readonly piece: { readonly observations: readonly { readonly id: string; readonly note: string | null }[] };
}
const versionOf = ({ id, version, piece }: Given): Version => ({
  ...{ id, version },
  notes: new Map(piece.observations.map((each) => [each.id, each.note ?? ""])),
});

/** A server as a process of its own over a new file with the seed graph, and how its pieces are written and read over HTTP. */
export async function openBenchHouse() {
  const folder = mkdtempSync(join(tmpdir(), "scribeline-live-"));
  const server = await startServerProcess({ SCRIBELINE_DATA: folder });
  const agent = new Agent({ keepAlive: true, maxSockets: 200 });
  const ask = async (query: string, variables: object) => {
    const { text } = await send(`${server.url}graphql`, {
      ...{ method: "POST", headers: { "Content-Type": "application/json" }, agent },
      body: JSON.stringify({ query, variables }),
    });
    const { data, errors } = JSON.parse(text);
    if (errors) throw new Error(JSON.stringify(errors));
    return data;
  };
  const { terms } = await ask("{ terms(kinds: [FEATURE], first: 1) { edges { node { id } } } }", {});
  const feature = terms.edges[0].node.id as string;
  const pieceOf = (notes: Notes) => ({
    ...{ title: "A piece of the measure", invented: true, examined: 2026, together: [], separate: [] },
    attribution: { date: "1760/1775" },
    parts: [{ id: "back", label: "Back", kind: "part.back" }],
    observations: [...notes].map(([id, note]) => ({
      ...{ id, part: "back", feature, seen: "PRESENT", sureness: "SURE", note },
    })),
  });
  const kept = (done: { readonly examination?: Given }): Version => {
    if (!done.examination) throw new Error(JSON.stringify(done));
    return versionOf(done.examination);
  };
  return {
    url: server.url,
    folder,
    create: async (): Promise<Version> => kept((await ask(CREATE, { piece: pieceOf(new Map()) })).done),
    change: async (id: string, on: number, notes: Notes): Promise<Version> =>
      kept((await ask(CHANGE, { id, on, piece: pieceOf(notes) })).done),
    read: async (id: string): Promise<Version> => versionOf((await ask(FIND, { id })).examination),
    stop: async () => {
      agent.destroy();
      server.kill("SIGTERM");
      await server.ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
export type BenchHouse = Awaited<ReturnType<typeof openBenchHouse>>;
