import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Claim } from "#server/domain/claim.ts";
import type { Report } from "#server/domain/report.ts";
import { withoutClaim } from "#server/domain/without-claim.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { examine } from "#server/reasoning/examine.ts";
import { leanOn } from "#server/reasoning/lean.ts";
import { walkGraph } from "#server/stores/memory/walk-graph.ts";
import { anyClaims, anyPiece, FEATURES, WORLD } from "#tests/support/any-graph.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aGraph } from "#tests/support/build-graph.ts";

/** Exceptions of the first claims, and signs, beside what bounds years. */
const anyEvidence: fc.Arbitrary<readonly Claim[]> = fc
  .tuple(
    anyClaims,
    fc.array(fc.nat(5), { maxLength: 3 }),
    fc.array(fc.constantFrom(...FEATURES), { maxLength: 2 }),
  )
  .map(([claims, of, signs]) => [
    ...claims,
    ...of
      .filter((at) => at < claims.length)
      .map((at, i) =>
        aClaim({
          id: `except.${i}`,
          relation: "void when",
          of: `claim.0${at}`,
          condition: "feature.b",
          anywhere: true,
        }),
      ),
    ...signs.map((subject, i) =>
      aClaim({ id: `sign.${i}`, relation: "indicates", subject, states: ["later"] }),
    ),
  ]);

const said = ({ findings, ruleOuts, signs, parts }: Report) => ({ findings, ruleOuts, signs, parts });

describe("what leans on a claim", () => {
  it("[E60] an examination without a claim is that of a graph that never had it", () => {
    fc.assert(
      fc.property(
        anyEvidence,
        anyPiece,
        fc.nat(),
        fc.constantFrom(1, 2, ASSUMED.maxDepth),
        (claims, piece, at, maxDepth) => {
          const graph = aGraph(WORLD, claims);
          const ask = { ...askFor(piece, ASSUMED), maxDepth };
          const neighbourhood = walkGraph(graph, 1, ask);
          fc.pre(neighbourhood.claims.length > 0);
          const dropped = neighbourhood.claims[at % neighbourhood.claims.length] as Claim;
          const without = claims.filter(({ id }) => id !== dropped.id);
          const fresh = walkGraph(aGraph(WORLD, without), 1, ask);
          const rest = withoutClaim(neighbourhood, dropped, ask);
          expect(rest).toEqual(fresh);
          expect(said(examine(piece, rest))).toEqual(said(examine(piece, fresh)));
        },
      ),
      { numRuns: 600 },
    );
  });

  it("[E60] names every finding that would be another, and none that neither would be nor rests on it", () => {
    fc.assert(
      fc.property(anyEvidence, anyPiece, (claims, piece) => {
        const graph = aGraph(WORLD, claims);
        const neighbourhood = walkGraph(graph, 1, askFor(piece, ASSUMED));
        const report = examine(piece, neighbourhood);
        const ruleOuts = (finding: string) =>
          report.ruleOuts.filter(({ findings }) => findings.includes(finding));
        for (const claim of neighbourhood.claims) {
          const rest = examine(piece, withoutClaim(neighbourhood, claim, askFor(piece, ASSUMED)));
          const named = leanOn(claim.id, report, rest).findings.map(({ now }) => now.id);
          for (const finding of report.findings) {
            const then = rest.findings.find(({ id }) => id === finding.id);
            const isOther =
              finding.label !== then?.label ||
              JSON.stringify([finding.possible, finding.usual]) !==
                JSON.stringify([then.possible, then.usual]);
            if (isOther) expect(named).toContain(finding.id);
            else if (
              !JSON.stringify([
                finding.support,
                finding.derivation,
                finding.setAside,
                ruleOuts(finding.id),
              ]).includes(claim.id)
            )
              // The verdict may still be held differently, as where only its certainty differs.
              expect(
                named.includes(finding.id) &&
                  JSON.stringify([finding.certain, finding.marginal, finding.reason, finding.gapYears]) ===
                    JSON.stringify([then.certain, then.marginal, then.reason, then.gapYears]) &&
                  finding.hardness === then.hardness &&
                  finding.direction === then.direction,
              ).toBe(false);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});
