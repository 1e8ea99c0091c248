import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Claim } from "#server/domain/claim.ts";
import { isProblem } from "#server/domain/problem.ts";
import { readDating } from "#server/domain/read-dating.ts";
import type { Atom, RuleOut } from "#server/domain/report.ts";
import { examine } from "#server/reasoning/examine.ts";
import { slowRuleOuts } from "#tests/oracles/slow-rule-outs.ts";
import { anyClaims, anyPiece, WORLD, wholeWorld } from "#tests/support/any-graph.ts";

const terms = new Map(WORLD.map((term) => [term.id, term]));

/** Up to six claims without scope, one of a relation and subject: fixed windows, no place, no rivals, no fall-back. */
const fewClaims = anyClaims.map((claims) => {
  const plain = claims
    .filter(
      (claim) =>
        claim.relation !== "confined to" &&
        claim.relation !== "not found in" &&
        claim.relation !== "attested",
    )
    .map((claim) => ({ ...claim, scope: {} }) as Claim);
  const keys = new Set<string>();
  return plain.filter((claim) => {
    const key = `${claim.relation} ${"subject" in claim ? claim.subject : ""}`;
    return keys.has(key) || keys.size >= 6 ? false : keys.add(key);
  });
});
const smallPiece = anyPiece.map((piece) => ({
  ...piece,
  attribution: { date: piece.attribution.date },
  parts: piece.parts.slice(0, 2),
  observations: piece.observations.filter((o) => o.part !== "p3").slice(0, 3),
}));

function atomText(atom: Atom): string {
  switch (atom.kind) {
    case "attr":
      return `attr:${atom.of}`;
    case "original":
      return `original:${atom.part}`;
    case "observation":
      return `observation:${atom.observation}`;
    case "claim":
      return `claim:${atom.claim}`;
    default:
      return `${atom.kind}:?`;
  }
}
const text = (ruleOut: RuleOut): string => ruleOut.atoms.map(atomText).sort().join(" ");

describe("rule-outs, against trying every subset", () => {
  it("[E24][E25][E26][E27] are minimal, true, and all of them", () => {
    let compared = 0;
    fc.assert(
      fc.property(fewClaims, smallPiece, (claims, piece) => {
        const dating = readDating(piece.attribution.date, "event");
        if (isProblem(dating)) throw new Error(dating.message);
        const claimed = [dating.begin[0], dating.end[1]] as const;
        const report = examine(piece, wholeWorld(claims));
        const slow = (hardness: "physical" | "practice") =>
          slowRuleOuts({ piece, claims, terms, hardness, claimed });
        const physical = slow("physical");
        const all = slow("practice");
        const found = report.ruleOuts.map(text).sort();
        expect(
          report.ruleOuts
            .filter((r) => r.hardness === "physical")
            .map(text)
            .filter((r) => !physical.includes(r)),
        ).toEqual([]);
        expect(found.filter((ruleOut) => !all.includes(ruleOut))).toEqual([]);
        expect([...physical, ...all].filter((ruleOut) => !found.includes(ruleOut))).toEqual([]);
        compared += found.length;
      }),
      { numRuns: 150 },
    );
    expect(compared).toBeGreaterThan(20);
  });
});
