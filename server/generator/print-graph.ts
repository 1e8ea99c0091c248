import { canonicalJson } from "../domain/canonical-json.ts";
import { planGraph, type Wishes } from "./graph-plan.ts";
import { makeGraph } from "./make-graph.ts";
import { makePiece } from "./make-piece.ts";
import { worldOf } from "./world.ts";

/** Characters that are handed on at once. */
const CHUNK = 100_000;

/** A made-up graph and made-up pieces as JSON Lines, some hundred lines at a time. */
export function* printGraph(wishes: Wishes & { readonly examinations: number }): Generator<string> {
  let chunk = "";
  for (const line of linesOf(wishes)) {
    chunk += `${canonicalJson(line)}\n`;
    if (chunk.length < CHUNK) continue;
    yield chunk;
    chunk = "";
  }
  if (chunk !== "") yield chunk;
}

function* linesOf(wishes: Wishes & { readonly examinations: number }): Generator<object> {
  for (const { kind, thing } of makeGraph(wishes)) yield { kind, [kind]: thing };
  const world = worldOf(planGraph(wishes));
  for (let number = 1; number <= wishes.examinations; number++)
    yield { kind: "examination", ...makePiece(world, number) };
}
