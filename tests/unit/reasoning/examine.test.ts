import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Claim } from "#server/domain/claim.ts";
import { isEmpty, meet, yearsFromJson } from "#server/domain/years.ts";
import { askFor } from "#server/reasoning/ask-for.ts";
import { ENGINE } from "#server/reasoning/engine.ts";
import { examine } from "#server/reasoning/examine.ts";
import { anyClaims, anyPiece, wholeWorld } from "#tests/support/any-graph.ts";
import { aPiece } from "#tests/support/build-piece.ts";
import { examineSketch } from "#tests/support/examine-sketch.ts";

const subjectOf = (claim: Claim): string => `${claim.relation} ${"subject" in claim ? claim.subject : ""}`;

describe("the report", () => {
  it("names its engine, revision and assumptions, and counts what it was given", () => {
    const claims = [
      { id: "needs", relation: "requires", subject: "F", ways: [["T"]] },
      { id: "t", relation: "introduced", subject: "T", when: "1790" },
      { id: "no", relation: "introduced", subject: "T", when: "1700", status: "rejected" },
    ] as const;
    const report = examineSketch(claims, { observations: [{ id: "o", part: "p", feature: "F" }] }, []);
    expect(report).toMatchObject({
      ...{ format: "scribeline/report", version: 1, engine: ENGINE, revision: 1, assumptions: ASSUMED },
      neighbourhood: { terms: 2, claims: 2, paths: 1 },
    });
  });

  it("[E34] reads nothing that the piece does not lead to", () => {
    // A date that cannot be read would be thrown, if anybody read it.
    const claims = [
      { id: "c", relation: "introduced", subject: "F", when: "1790" },
      { id: "apart", relation: "introduced", subject: "elsewhere", when: "not a date" },
    ] as const;
    const observations = (feature: string) => ({ observations: [{ id: "o", part: "p", feature }] });
    expect(examineSketch(claims, observations("F")).findings[0]?.label).toBe("contradictory");
    expect(() => examineSketch(claims, observations("elsewhere"))).toThrow(/not a date/);
  });

  it("says what it assumes, and answers under what it is told to assume", () => {
    const claims = [{ id: "c", relation: "introduced", subject: "F", when: "1780~" }] as const;
    const piece = { date: "1775", observations: [{ id: "o", part: "p", feature: "F" }] };
    const under = (padYear: number) => examineSketch(claims, piece, [], { ...ASSUMED, padYear });
    expect(under(5).findings[0]?.label).toBe("consistent");
    expect(under(4).findings[0]?.label).toBe("contradictory");
    expect(under(4).assumptions.padYear).toBe(4);
  });

  it("names what it does not know: undated terms, open lists, ends, chains cut short", () => {
    const claims = [
      { id: "needs", relation: "requires", subject: "F", ways: [["T"], ["U"]] },
      { id: "open", relation: "requires", subject: "U", ways: [["V"]], closed: false },
      { id: "span", relation: "current", subject: "G", when: "1700/" },
      { id: "never", relation: "introduced", subject: "H", when: "[..1750]" },
    ] as const;
    const observations = ["F", "G", "H"].map((feature) => ({ id: `o-${feature}`, part: "p", feature }));
    expect(examineSketch(claims, { observations }).gaps).toEqual([
      { kind: "undated-term", term: "T", finding: "o-F" },
      { kind: "unknown-end", term: "G", claim: "span", finding: "o-G" },
      { kind: "unknown-end", term: "H", claim: "never", finding: "o-H" },
      { kind: "open-list", term: "U", claim: "open", finding: "o-F" },
    ]);
  });
});

describe("what is asked of the graph", () => {
  const piece = aPiece({
    ...{ region: "north", form: "chest", style: "S", maker: "M" },
    parts: [{ id: "p", kind: "drawer", region: "south" }],
    observations: [
      { id: "a", part: "p", feature: "F" },
      { id: "b", part: "p", feature: "F", seen: "absent" },
    ],
  });
  it("is everything the piece names, for its regions", () => {
    expect(askFor(piece, ASSUMED)).toEqual({
      seeds: ["F", "M", "S", "chest", "drawer", "north", "south"],
      regions: ["north", "south"],
      maxDepth: ASSUMED.maxDepth,
    });
  });
  it("is all regions if the claim leaves its own open", () => {
    const { region: _, ...attribution } = piece.attribution;
    expect(askFor({ ...piece, attribution }, ASSUMED).regions).toEqual([]);
  });
});

describe("on any graph and piece", () => {
  const cases = { numRuns: 150 };

  it("[E33] the order of claims, terms, parts and observations changes no byte", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const one = wholeWorld(claims);
        const other = { ...one, claims: [...one.claims].reverse(), terms: [...one.terms].reverse() };
        const turned = { ...piece, observations: [...piece.observations].reverse() };
        expect(JSON.stringify(examine(turned, other))).toBe(JSON.stringify(examine(piece, one)));
      }),
      cases,
    );
  });

  it("[E27] what contradicts at every place is ruled out at every place, physically if it is so", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const { findings, ruleOuts, attribution } = examine(piece, wholeWorld(claims));
        for (const finding of findings) {
          const against = ruleOuts.filter(
            (ruleOut) =>
              ruleOut.findings.length === 1 &&
              ruleOut.findings[0] === finding.id &&
              (ruleOut.hardness === "physical" || finding.hardness === "practice"),
          );
          const places = new Set(against.flatMap((ruleOut) => ruleOut.places).map((p) => JSON.stringify(p)));
          if (finding.label === "contradictory") expect(places.size).toBe(attribution.places.length);
          else expect(places.size).toBeLessThan(attribution.places.length);
        }
      }),
      cases,
    );
  });

  it("[E7] nothing soft stands in what is physical", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const hard = new Set(
          claims.filter((claim) => "hardness" in claim && claim.hardness === "physical").map(({ id }) => id),
        );
        const { findings, ruleOuts } = examine(piece, wholeWorld(claims));
        const physical = [
          ...findings
            .filter(({ hardness }) => hardness === "physical")
            .flatMap(({ support }) => (support.assumptions.length > 0 ? [] : support.claims)),
          ...ruleOuts
            .filter(
              ({ hardness, atoms }) =>
                hardness === "physical" && !atoms.some(({ kind }) => kind === "assumption"),
            )
            .flatMap(({ atoms }) =>
              atoms.flatMap((atom) =>
                atom.kind === "claim" ? [atom.claim] : atom.kind === "rivals" ? atom.claims : [],
              ),
            ),
        ];
        expect(physical.filter((claim) => !hard.has(claim))).toEqual([]);
      }),
      cases,
    );
  });

  it("[E2] usual years lie within possible ones, strict years within loose ones", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        for (const { possible, usual } of examine(piece, wholeWorld(claims)).findings)
          for (const [inner, outer] of [
            [usual.outer, possible.outer],
            [usual.inner, possible.inner],
            [possible.inner, possible.outer],
            [usual.inner, usual.outer],
          ] as const)
            expect(meet(yearsFromJson(inner), yearsFromJson(outer))).toEqual(yearsFromJson(inner));
      }),
      cases,
    );
  });

  it("[E19] the support of a contradiction is enough for it, and nothing in it can be left out", () => {
    let contradictions = 0;
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        // Without scopes and rivals, so that giving up one claim brings back no other.
        const plain = claims.map((claim) => ({ ...claim, scope: {} }) as Claim);
        const settled = [...new Map(plain.map((claim) => [subjectOf(claim), claim])).values()];
        const labelOn = (kept: readonly Claim[], id: string) => {
          const found = examine(piece, wholeWorld(kept)).findings.find((finding) => finding.id === id);
          return `${found?.label} ${found?.hardness}`;
        };
        for (const finding of examine(piece, wholeWorld(settled)).findings) {
          if (finding.label !== "contradictory") continue;
          contradictions += 1;
          const label = `contradictory ${finding.hardness}`;
          const support = settled.filter(({ id }) => finding.support.claims.includes(id));
          expect(labelOn(support, finding.id)).toBe(label);
          for (const one of support)
            expect(
              labelOn(
                support.filter((other) => other !== one),
                finding.id,
              ),
            ).not.toBe(label);
        }
      }),
      cases,
    );
    expect(contradictions).toBeGreaterThan(10);
  });

  it("[E20] the derivation of a contradiction gives years that miss the claimed ones", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const { findings, attribution } = examine(piece, wholeWorld(claims));
        for (const { label, derivation, support } of findings) {
          if (label === "silent") expect(derivation).toBeUndefined();
          else if (derivation === undefined || derivation.kind === "told") expect(support.claims).toEqual([]);
          else if (label === "contradictory")
            expect(isEmpty(meet(yearsFromJson(derivation.years), yearsFromJson([attribution.years])))).toBe(
              true,
            );
        }
      }),
      cases,
    );
  });
});
