import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Atom } from "#server/domain/report.ts";
import { randomSource } from "#server/generator/random-source.ts";
import { openZ3, type Z3, type Z3Question } from "#tests/oracles/z3-of-a-sketch.ts";
import { anySketch, QUARTERS } from "#tests/support/any-sketch.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch } from "#tests/support/examine-sketch.ts";

const TERMS = aTree("region", { world: { east: {}, north: {}, west: {} } });
const INSTANCES = 220;

let z3: Z3;
beforeAll(async () => {
  z3 = await openZ3();
});
afterAll(() => z3.stop());

function name(atom: Atom): string {
  switch (atom.kind) {
    case "attr":
      return atom.of;
    case "original":
      return `original ${atom.part}`;
    case "observation":
      return atom.observation;
    case "separate":
      return `separate ${atom.parts.join(" ")}`;
    case "claim":
      return atom.claim;
    case "rivals":
      return atom.claims.join("|");
    case "assumption":
      return atom.assumption;
  }
}

/** The sets that contain none of these and have no larger one that does not: what is left when each is hit once. */
function largestWithout(atoms: readonly string[], conflicts: readonly (readonly string[])[]): string[][] {
  let hits: Set<string>[] = [new Set()];
  for (const conflict of conflicts) {
    const hit = hits.flatMap((set) =>
      conflict.some((atom) => set.has(atom)) ? [set] : conflict.map((atom) => new Set([...set, atom])),
    );
    hits = hit.filter(
      (set, i) =>
        !hit.some(
          (other, j) => other.size <= set.size && (other.size < set.size || j < i) && other.isSubsetOf(set),
        ),
    );
  }
  return hits.map((set) => atoms.filter((atom) => !set.has(atom)));
}

/** Each does not hold, is minimal, and whatever holds none of them does hold. */
async function expectAll(question: Z3Question, conflicts: readonly (readonly string[])[]): Promise<void> {
  for (const conflict of conflicts) {
    expect((await question.core(conflict)).length).toBe(conflict.length);
    for (const atom of conflict)
      expect(await question.holds(conflict.filter((other) => other !== atom))).toBe(true);
  }
  for (const set of largestWithout(question.atoms, conflicts)) expect(await question.holds(set)).toBe(true);
}

describe("rule-outs, against z3", () => {
  it("[E24][E26][E27][E28] are all minimal conflicts, place by place, with gaps and places of their own", async () => {
    const random = randomSource(20);
    const sizes = new Map<number, number>();
    let torn = 0;
    for (let n = 0; n < INSTANCES; n++) {
      const { claims, piece } = anySketch(random);
      const report = examineSketch(claims, piece, TERMS);
      expect([report.complete, report.ruleOutCount.count]).toEqual([true, report.ruleOuts.length]);
      const { places } = report.attribution;
      for (const place of piece.region === undefined ? [...QUARTERS, "elsewhere"] : [piece.region]) {
        // A quarter that no claim tells apart is part of the rest.
        const at = places.find(({ region }) => region === place) ?? places[0];
        const here = report.ruleOuts.filter((ruleOut) => at !== undefined && ruleOut.places.includes(at));
        const question = z3.ask({ claims, piece }, place);
        await expectAll(
          question,
          here.map(({ atoms }) => atoms.map(name)),
        );
      }
      for (const { findings, atoms } of report.ruleOuts) {
        const windows = findings.length + Number(atoms.some((atom) => name(atom) === "date"));
        sizes.set(windows, (sizes.get(windows) ?? 0) + 1);
      }
      torn += report.ruleOuts.filter(
        ({ parts }) => parts.includes("p0" as never) && piece.parts[0]?.region === "world",
      ).length;
    }
    expect(sizes.get(3) ?? 0).toBeGreaterThan(30);
    expect(torn).toBeGreaterThan(30);
  });
});
