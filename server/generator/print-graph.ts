import { canonicalJson } from "../domain/canonical-json.ts";
import { planGraph, type Wishes } from "./graph-plan.ts";
import { makeGraph } from "./make-graph.ts";
import { makePiece } from "./make-piece.ts";
import { worldOf } from "./world.ts";

/** Characters that are handed on at once. */
const CHUNK = 100_000;

/** A made-up graph as lines of an import (docs/formats/import.schema.json), some hundred lines at a time. */
export const printGraph = (wishes: Wishes): Generator<string> => inChunks(thingsOf(wishes));

/** Made-up pieces of that graph, each a line as docs/formats/piece.schema.json has it. */
export const printPieces = (wishes: Wishes, count: number): Generator<string> =>
  inChunks(piecesOf(wishes, count));

function* inChunks(lines: Iterable<object>): Generator<string> {
  let chunk = "";
  for (const line of lines) {
    chunk += `${canonicalJson(line)}\n`;
    if (chunk.length < CHUNK) continue;
    yield chunk;
    chunk = "";
  }
  if (chunk !== "") yield chunk;
}

function* thingsOf(wishes: Wishes): Generator<object> {
  for (const { kind, thing } of makeGraph(wishes)) yield { kind, [kind]: thing };
}

function* piecesOf(wishes: Wishes, count: number): Generator<object> {
  const world = worldOf(planGraph(wishes));
  for (let number = 1; number <= count; number++) {
    const { id, piece } = makePiece(world, number);
    yield { format: "scribeline/piece", version: 1, id, ...piece };
  }
}
