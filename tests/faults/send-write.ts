import { PROBLEM_CODES } from "#server/domain/problem.ts";
import { aCommit } from "#tests/support/build-change.ts";
import type { Doors } from "./scribeline-process.ts";
import { type Answer, changeOf, pieceOf, type Write } from "./write.ts";

/** What a server can say without having found out whether a write was kept. */
const UNKNOWING: readonly string[] = ["STORE_UNREACHABLE", "DEADLINE_EXCEEDED"];
const TYPED: readonly string[] = [...PROBLEM_CODES, "DEADLINE_EXCEEDED", "SHUTTING_DOWN"];

/** What came back, and what should not have: an answer without a code of ours. */
export interface Sent {
  readonly answer: Answer;
  readonly untyped?: string;
}

const CHANGED =
  "{ __typename ... on ExaminationChanged { examination { id version } } ... on Refused { problems { code message } } }";
const OPERATIONS = {
  create: `mutation Sent($piece: PieceInput!) { sent: createExamination(piece: $piece) ${CHANGED} }`,
  change: `mutation Sent($id: ID!, $on: Int!, $piece: PieceInput!) { sent: changeExamination(id: $id, expectedVersion: $on, piece: $piece) ${CHANGED} }`,
  undo: `mutation Sent($id: ID!, $on: Int!) { sent: undoExamination(id: $id, expectedVersion: $on) ${CHANGED} }`,
  delete: `mutation Sent($id: ID!, $on: Int!) { sent: deleteExamination(id: $id, expectedVersion: $on) ${CHANGED} }`,
};

/** Sends a write once: an examination by GraphQL, a change of the graph by the door for it. Waits at most `patience` ms. */
export async function sendWrite(doors: Doors, write: Write, patience: number): Promise<Sent> {
  const [url, body] =
    write.does === "commit"
      ? [doors.commits, commitOf(write)]
      : [`${doors.url}graphql`, { query: OPERATIONS[write.does], variables: variablesOf(write) }];
  try {
    const response = await fetch(url, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(body),
      signal: AbortSignal.timeout(patience),
    });
    const text = await response.text();
    return readAnswer(text, response.status);
  } catch (failure) {
    const why = failure instanceof Error ? `${failure.name}: ${failure.message}` : String(failure);
    const isHanging = failure instanceof Error && failure.name === "TimeoutError";
    return {
      answer: { is: "unanswered", why },
      ...(isHanging ? { untyped: `no answer to ${write.key} in ${patience} ms` } : {}),
    };
  }
}

const commitOf = ({ key, things, expected }: Extract<Write, { does: "commit" }>) =>
  aCommit(changeOf(key, things), { message: key, ...(expected === undefined ? {} : { expected }) });

const variablesOf = (write: Exclude<Write, { does: "commit" }>): object => ({
  ...("id" in write ? { id: write.id, on: write.on } : {}),
  ...(write.does === "create" || write.does === "change" ? { piece: pieceOf(write.key) } : {}),
});

interface Said {
  readonly number?: number;
  readonly hash?: string;
  readonly code?: string;
  readonly data?: {
    readonly sent?: {
      readonly examination?: { readonly id: string; readonly version: number };
      readonly problems?: readonly { readonly code: string }[];
    } | null;
  } | null;
  readonly errors?: readonly { readonly message: string; readonly extensions?: { readonly code?: string } }[];
}

function readAnswer(text: string, status: number): Sent {
  let said: Said;
  try {
    said = JSON.parse(text) as Said;
  } catch {
    return { answer: { is: "unanswered", why: "no JSON" }, untyped: `${status} ${text.slice(0, 200)}` };
  }
  if (said.number !== undefined && said.hash !== undefined)
    return { answer: { is: "kept", revision: { number: said.number, hash: said.hash } } };
  const examination = said.data?.sent?.examination;
  if (examination) return { answer: { is: "kept", examination: examination as never } };
  const problem = said.code ?? said.data?.sent?.problems?.[0]?.code;
  if (problem !== undefined && TYPED.includes(problem))
    return UNKNOWING.includes(problem)
      ? { answer: { is: "unanswered", why: problem } }
      : { answer: { is: "refused", code: problem } };
  const code = said.errors?.[0]?.extensions?.code ?? "";
  const answer = { is: "unanswered", why: code } as const;
  return TYPED.includes(code) ? { answer } : { answer, untyped: `${status} ${text.slice(0, 300)}` };
}
