import { checkGraph } from "../domain/check-graph.ts";
import { checkReferenceRows } from "../domain/check-reference-rows.ts";
import type { Claim } from "../domain/claim.ts";
import type { Problem } from "../domain/problem.ts";
import type { ReferenceRow } from "../domain/reference-row.ts";
import type { Source } from "../domain/source.ts";
import type { Term } from "../domain/term.ts";
import type { Register } from "./read-register.ts";
import { type SeedLine, said } from "./seed-line.ts";
import { checkBasisNotRaised, checkIdsOnce, checkLabelsOnce, checkSourcesCited } from "./seed-rules.ts";

/** The files of a seed, line by line. */
export interface SeedLines {
  readonly terms: readonly SeedLine<Term>[];
  readonly claims: readonly SeedLine<Claim>[];
  readonly sources: readonly SeedLine<Source>[];
  readonly rows: readonly SeedLine<ReferenceRow>[];
  readonly register: Register;
}

/**
 * Everything wrong with a seed, each by file, line, id and field: what the graph refuses, and what only a seed has to keep to:
 * labels once within a kind, no source that nobody cites, no basis raised above the fact register. Rule [S20] of
 * docs/spec/4-store.md. Things may have any shape; the rules of the seed are asked once the graph is sound.
 */
export function checkSeed(seed: SeedLines): readonly Problem[] {
  const { terms, claims, sources, rows, register } = seed;
  const unsound = [...checkIdsOnce([...terms, ...claims, ...sources, ...rows]), ...checkGraphOf(seed)];
  if (unsound.length > 0) return unsound;
  return [
    ...checkLabelsOnce(terms),
    ...checkSourcesCited(sources, [...claims, ...rows]),
    ...checkBasisNotRaised([...claims, ...rows], register),
  ];
}

function checkGraphOf({ terms, claims, sources, rows }: SeedLines): readonly Problem[] {
  const things = { terms: byId(terms), claims: byId(claims), sources: byId(sources) };
  const graph = {
    terms: thingsOf(things.terms),
    claims: thingsOf(things.claims),
    sources: thingsOf(things.sources),
  };
  const ofGraph = checkGraph(graph).flatMap(({ path: [kind, id, ...path], ...found }) => {
    const line = things[kind as keyof typeof things].get(String(id));
    return line === undefined ? [] : [said(line, { ...found, path })];
  });
  const ofRows = rows.flatMap((line) =>
    checkReferenceRows([line.thing], graph).map((found) => said(line, found)),
  );
  return [...ofGraph, ...ofRows];
}

const byId = <Thing extends { readonly id: string }>(lines: readonly SeedLine<Thing>[]) =>
  new Map(lines.map((line) => [line.thing.id as string, line]));

const thingsOf = <Thing extends { readonly id: string }>(lines: ReadonlyMap<string, SeedLine<Thing>>) =>
  new Map([...lines].map(([id, { thing }]) => [id, thing]));
