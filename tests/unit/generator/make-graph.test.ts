import { describe, expect, it } from "vitest";
import { checkGraph } from "#server/domain/check-graph.ts";
import { checkPiece } from "#server/domain/check-piece.ts";
import { readPiece } from "#server/formats/read-piece.ts";
import { planGraph, type Wishes } from "#server/generator/graph-plan.ts";
import { makeGraph } from "#server/generator/make-graph.ts";
import { makePiece } from "#server/generator/make-piece.ts";
import { printGraph, printPieces } from "#server/generator/print-graph.ts";
import { worldOf } from "#server/generator/world.ts";
import { writeGraph } from "#server/generator/write-graph.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { answered, refusedWith } from "#tests/support/expect-answer.ts";
import { graphOf } from "#tests/support/graph-of.ts";

const WISHES: Wishes = { claims: 6_000, claimsATerm: 4, seed: 1 };

describe("a made-up graph", () => {
  it.each([
    [100, 4],
    [100, 1.25],
    [300, 20],
    [2_453, 1.25],
    [6_000, 4],
    [6_000, 30],
  ])(
    "[U1] is sound by every check of a graph and holds as many claims as wanted: %i at %d a term",
    (claims, claimsATerm) => {
      for (const seed of [1, 2, 77]) {
        const graph = graphOf(makeGraph({ claims, claimsATerm, seed }));
        expect(graph.claims.size).toBe(claims);
        expect(checkGraph(graph)).toEqual([]);
      }
    },
  );

  it("[U1] names only what came before, but for look-alikes, so that it can be written step by step", async () => {
    const store = openMemoryStore();
    const steps: number[] = [];
    const wishes = { claims: 30_000, claimsATerm: 4, seed: 3, examinations: 4 };
    answered(await writeGraph(store, wishes, (_, claims) => steps.push(claims)));
    expect(steps.length).toBeGreaterThan(2);
    expect(steps.at(-1)).toBe(30_000);
    expect((await store.listExaminations({ first: 10 })).total).toBe(4);
    expect(refusedWith(await writeGraph(store, wishes))).toBe("STORE_NOT_EMPTY");
  });

  it("[U2] is the same to the byte for the same wishes, and another for another number", () => {
    const text = (seed: number) =>
      [...printGraph({ ...WISHES, seed }), ...printPieces({ ...WISHES, seed }, 3)].join("");
    expect(text(1)).toBe(text(1));
    expect(text(1)).not.toBe(text(2));
  });

  it("[U3] says of everything in it that it is made up", () => {
    const graph = graphOf(makeGraph(WISHES));
    for (const term of graph.terms.values()) {
      expect(term.label).toMatch(/^made-up /);
      expect(term.note).toMatch(/^Made up/);
    }
    for (const { csl } of graph.sources.values()) expect(csl.title).toMatch(/^Made-up .* that nobody wrote$/);
    for (const { id, note } of graph.claims.values()) {
      expect(id).toMatch(/^claim\.made-up-/);
      if (note !== undefined) expect(note).toMatch(/^Made up/);
    }
    const labels = [...graph.terms.values()].map(({ kind, label }) => `${kind} ${label}`);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it("[U4] has circles of needs, exceptions of exceptions, rejected and proposed claims, and several citations", () => {
    const { claims } = graphOf(makeGraph(WISHES));
    const all = [...claims.values()];
    const isException = (id: string): boolean => claims.get(id)?.relation === "void when";
    expect(all.some((claim) => claim.relation === "void when" && isException(claim.of))).toBe(true);
    expect(new Set(all.map(({ status }) => status))).toEqual(new Set(["accepted", "rejected", "proposed"]));
    expect(all.some(({ citations }) => citations.length > 1)).toBe(true);
    const leads = new Map<string, Set<string>>();
    for (const claim of all)
      if (claim.relation === "requires")
        leads.set(claim.subject, (leads.get(claim.subject) ?? new Set()).union(new Set(claim.ways.flat())));
    const circles = [...leads].filter(([from, to]) =>
      [...to].some((next) => leads.get(next)?.has(from as never)),
    );
    expect(circles.length).toBeGreaterThan(4);
  });

  it("[U5] has pieces that can be examined on it", () => {
    const graph = graphOf(makeGraph(WISHES));
    const world = worldOf(planGraph(WISHES));
    const [line = ""] = [...printPieces(WISHES, 1)].join("").split("\n");
    expect(readPiece(JSON.parse(line))).toEqual(makePiece(world, 1).piece);
    for (let number = 1; number <= 50; number++) {
      const { piece } = makePiece(world, number);
      expect(piece.invented).toBe(true);
      expect(checkPiece(piece, (term) => graph.terms.get(term))).toEqual([]);
      expect(piece.observations.length).toBeGreaterThanOrEqual(20);
    }
  });
});
