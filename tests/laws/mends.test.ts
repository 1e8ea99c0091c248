import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import type { Piece } from "#server/domain/examination.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Mends } from "#server/domain/weighing/mends.ts";
import { claimsHeld } from "#server/reasoning/atoms.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { groundOf, subjectWithout } from "#server/reasoning/mends/ground.ts";
import { pricesOf } from "#server/reasoning/mends/prices.ts";
import { mendsOf, readMends } from "#server/reasoning/mends/read-mends.ts";
import { windowsAt } from "#server/reasoning/rule-outs/windows.ts";
import { holds, slowMends } from "#tests/oracles/slow-mends.ts";
import { anyClaims, anyPiece, wholeWorld } from "#tests/support/any-graph.ts";
import {
  groundOfInstance,
  randomInstance,
  USUAL_BUDGET,
  WITHOUT_LIMIT,
  wordOf,
  wordsOf,
} from "#tests/support/mend-instance.ts";

const seeds = fc.integer({ min: 1, max: 1_000_000 });

describe("mends of fixed windows", () => {
  it("[M3][M4][M5][M7][M12] are all the minimal sets that trying every set finds, in order", () => {
    let compared = 0;
    fc.assert(
      fc.property(seeds, fc.integer({ min: 0, max: 1 }), (seed, separate) => {
        const size = { parts: 2, observations: 3, claims: 2, missing: 0.6, second: 0.4, gaps: 0.4, separate };
        const instance = randomInstance(seed, size);
        const { ground, scene } = groundOfInstance(instance);
        const { listed, more, proved } = mendsOf(ground, "physical", scene, WITHOUT_LIMIT);
        expect({ more, proved }).toEqual({ more: false, proved: true });
        expect(new Map(listed.map((mend) => [wordsOf(mend.givenUp), mend.price]))).toEqual(
          slowMends(instance),
        );
        const order = listed.map((mend) => [mend.price, mend.givenUp.length] as const);
        expect(order).toEqual(order.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]));
        compared += listed.length;
      }),
      { numRuns: 20 },
    );
    expect(compared).toBeGreaterThan(100);
  });

  it("[M3][M12] each restore everything, and no part of one does", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const size = {
          parts: 5,
          observations: 14,
          claims: 9,
          missing: 0.4,
          second: 0.3,
          gaps: 0.3,
          separate: 2,
        };
        const instance = randomInstance(seed, size);
        const { ground, scene } = groundOfInstance(instance);
        for (const { givenUp } of mendsOf(ground, "physical", scene, USUAL_BUDGET).listed) {
          const words = givenUp.map(wordOf);
          expect(holds(new Set(words), instance)).toBe(true);
          for (const word of words)
            expect(holds(new Set(words.filter((one) => one !== word)), instance)).toBe(false);
        }
      }),
      // Its piece is of a year within the last five of an older part and the first five of a younger one.
      { numRuns: 20, examples: [[368_976]] },
    );
  });

  it("[M10] are one option of each row together", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const size = {
          parts: 4,
          observations: 8,
          claims: 6,
          missing: 0.5,
          second: 0.2,
          gaps: 0.2,
          separate: 1,
        };
        const instance = randomInstance(seed, size);
        const { ground, scene } = groundOfInstance(instance);
        const { perPart, best } = mendsOf(ground, "physical", scene, { ...WITHOUT_LIMIT, listed: 1 });
        for (const pick of ["first", "last"] as const) {
          const options = perPart.map((row) => row.options.at(pick === "first" ? 0 : -1)?.givenUp ?? []);
          expect(holds(new Set(options.flat().map(wordOf)), instance)).toBe(true);
        }
        const rows = perPart.map((row) => Math.min(...row.options.map(({ price }) => price)));
        expect(best?.price ?? 0).toBeLessThanOrEqual(rows.reduce((sum, price) => sum + price, 0));
      }),
      { numRuns: 60 },
    );
  });
});

const subjectOf = (piece: Piece, claims: Parameters<typeof wholeWorld>[0]) =>
  readSubject(piece, knowGraph(wholeWorld(claims), ASSUMED), ASSUMED);
const givenUpIn = (mends: Mends) => [...mends.listed, ...(mends.best ? [mends.best] : [])];

describe("mends of pieces on graphs", () => {
  it("[M8] leave nothing at odds on the graph without what they give up, read anew", () => {
    let dropped = 0;
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const subject = subjectOf(piece, claims);
        const prices = pricesOf(subject, ASSUMED_ODDS);
        for (const level of ["physical", "practice"] as const) {
          const ground = groundOf(subject, level, prices);
          for (const { givenUp, year, place } of givenUpIn(mendsOf(ground, level, subject, USUAL_BUDGET))) {
            const gone = givenUp.flatMap((one) =>
              one.kind === "claim" ? [one.claim] : one.kind === "rivals" ? one.claims : [],
            );
            const left = subjectOf(
              {
                ...piece,
                observations: piece.observations.filter(({ id }) => !isIn(givenUp, "misread", id)),
              },
              claims.filter(({ id }) => !gone.includes(id)),
            );
            dropped += gone.length;
            const at = left.places.findIndex(
              (one) => one.region === place.region && one.elsewhere === place.elsewhere,
            );
            // Places that only the claims given up told apart are one now.
            if (at < 0) continue;
            const assumed = givenUp.flatMap((one) => (one.kind === "assumption" ? [one.assumption] : []));
            const misses = windowsAt(at, left)
              .windows.filter(({ hardness }) => level === "practice" || hardness === "physical")
              .filter(
                ({ held }) =>
                  !held.some(({ atom }) => atom.kind === "assumption" && assumed.includes(atom.assumption)),
              )
              .filter(({ years }) => !years.some(([first, last]) => first <= year && year <= last));
            for (const { part, check } of misses) {
              const isExcused =
                givenUp.some(
                  (one) =>
                    (one.kind === "later" || one.kind === "reused") &&
                    part !== undefined &&
                    one.parts.includes(part),
                ) || isIn(givenUp, "altered", check.id);
              expect(isExcused).toBe(true);
            }
          }
        }
      }),
      { numRuns: 500 },
    );
    expect(dropped).toBeGreaterThan(60);
  });

  it("[M8] tell what brings something back without reading the whole piece again", () => {
    let [revived, asked] = [0, 0];
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const subject = subjectOf(piece, claims);
        const ground = groundOf(subject, "practice", pricesOf(subject, ASSUMED_ODDS));
        const windowsOf = (of: typeof subject) =>
          of.places.flatMap((_, place) =>
            windowsAt(place, of).windows.map(
              ({ held, years }) => `${place} ${held.map(({ key }) => key)} ${years}`,
            ),
          );
        const before = new Set(windowsOf(subject));
        const held = subject.places.flatMap((_, place) =>
          windowsAt(place, subject).windows.flatMap((window) => claimsHeld(window.held)),
        );
        for (const claim of new Set(held)) {
          const item = ground.items.add({ kind: "claim", claim }, 0) as number;
          const after = windowsOf(subjectWithout(subject, [item], ground.items));
          if (ground.reviving([item]).length > 0) revived++;
          else expect(after.filter((window) => !before.has(window))).toEqual([]);
          asked++;
        }
      }),
      { numRuns: 600 },
    );
    expect(revived).toBeGreaterThan(10);
    expect(asked - revived).toBeGreaterThan(100);
  });

  it("[M12] are the same bytes whatever the order of the input", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const turned = {
          ...piece,
          parts: piece.parts.toReversed(),
          observations: piece.observations.toReversed(),
        };
        expect(JSON.stringify(readMends(subjectOf(turned, claims.toReversed()), ASSUMED_ODDS))).toBe(
          JSON.stringify(readMends(subjectOf(piece, claims), ASSUMED_ODDS)),
        );
      }),
      { numRuns: 80 },
    );
  });

  it("[M1] cost no less for what is usual than for what is possible", () => {
    fc.assert(
      fc.property(anyClaims, anyPiece, (claims, piece) => {
        const { possible, usual } = readMends(subjectOf(piece, claims), ASSUMED_ODDS);
        expect(usual.lowerBound).toBeLessThanOrEqual(usual.best?.price ?? Number.POSITIVE_INFINITY);
        expect(possible.best?.price).toBeLessThanOrEqual(usual.best?.price ?? Number.POSITIVE_INFINITY);
      }),
      { numRuns: 80 },
    );
  });
});

const isIn = (
  givenUp: Mends["listed"][number]["givenUp"],
  kind: "misread" | "altered",
  id: string,
): boolean => givenUp.some((one) => one.kind === kind && one.observation === id);
