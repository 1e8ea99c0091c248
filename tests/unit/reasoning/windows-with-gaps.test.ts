import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ALL_YEARS, canonicalYears, isEmpty, meet, type Span, type Years } from "#server/domain/years.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { examineSketch } from "#tests/support/examine-sketch.ts";

const CLAIMED: Span = [1712, 1716];
const PARTS = ["p0", "p1", "p2"];

interface Sight {
  readonly part: string;
  readonly spans: readonly Span[];
}
const span = fc
  .tuple(fc.integer({ min: 1700, max: 1728 }), fc.integer({ min: 0, max: 8 }))
  .map(([first, length]): Span => [first, first + length]);
const sights = fc.array(
  fc.record({ part: fc.constantFrom(...PARTS), spans: fc.array(span, { minLength: 1, maxLength: 3 }) }),
  { minLength: 1, maxLength: 5 },
);

/** One feature a sight; claims of one maker's years that disagree leave a window with gaps, and are one atom. */
const claimsFor = (all: readonly Sight[]): ClaimSketch[] =>
  all.flatMap(
    ({ spans }, i) =>
      spans.map(([first, last], j) => ({
        ...{ id: `c${i}-${j}`, relation: "active", subject: `F${i}`, when: `${first}/${last}` },
      })) as ClaimSketch[],
  );

/** Whether these atoms hold together: some year for each part, and one for all originals and the claim. */
function holdTogether(atoms: ReadonlySet<string>, all: readonly Sight[]): boolean {
  let whole: Years = atoms.has("date") ? [CLAIMED] : ALL_YEARS;
  for (const part of PARTS) {
    const years = all
      .map(({ spans }, i) => ({
        seen: atoms.has(`o${i}`) && all[i]?.part === part,
        years: canonicalYears(spans),
      }))
      .filter(({ seen }) => seen)
      .map((window) => window.years)
      .reduce(meet, ALL_YEARS);
    if (isEmpty(years)) return false;
    if (atoms.has(part)) whole = meet(whole, years);
  }
  return !isEmpty(whole);
}

function minimalClashes(all: readonly Sight[]): string[] {
  const atoms = ["date", ...PARTS, ...all.map((_, i) => `o${i}`)];
  const found: number[] = [];
  const size = (set: number): number => set.toString(2).replaceAll("0", "").length;
  const subsets = Array.from({ length: 2 ** atoms.length }, (_, set) => set).sort(
    (a, b) => size(a) - size(b),
  );
  for (const set of subsets)
    if (
      !found.some((smaller) => (set & smaller) === smaller) &&
      !holdTogether(new Set(atoms.filter((_, i) => set & (1 << i))), all)
    )
      found.push(set);
  return found.map((set) => atoms.filter((_, i) => set & (1 << i)).join(" "));
}

describe("rule-outs of windows with gaps, against trying every subset", () => {
  it("[E26][E27] are all there are", () => {
    let [found, wide] = [0, 0];
    fc.assert(
      fc.property(sights, (all) => {
        const report = examineSketch(claimsFor(all), {
          date: CLAIMED.join("/"),
          parts: PARTS,
          observations: all.map(({ part }, i) => ({ id: `o${i}`, part, feature: `F${i}` })),
        });
        const texts = report.ruleOuts.map(({ atoms }) =>
          atoms
            .flatMap((atom): string[] => {
              if (atom.kind === "attr") return [atom.of];
              if (atom.kind === "original") return [atom.part];
              return atom.kind === "observation" ? [atom.observation] : [];
            })
            .join(" "),
        );
        const minimal = minimalClashes(all);
        // Claims that agree are two supports of one window.
        expect([...new Set(texts)].sort()).toEqual(minimal.sort());
        expect([report.complete, report.ruleOutCount.count]).toEqual([true, texts.length]);
        found += texts.length;
        wide += report.ruleOuts.filter(
          ({ atoms, findings }) => findings.length + Number(atoms[0]?.kind === "attr") > 2,
        ).length;
      }),
      { numRuns: 400 },
    );
    // The draw is worth something only if it meets both.
    expect(found).toBeGreaterThan(200);
    expect(wide).toBeGreaterThan(20);
  });
});
