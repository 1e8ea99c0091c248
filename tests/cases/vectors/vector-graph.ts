import type { Claim } from "#server/domain/claim.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";
import { aTree } from "#tests/support/build-neighbourhood.ts";

/** The regions of the vectors: World > England > London; World > America > NewEngland > Boston, RuralNH; World > France. */
export const REGIONS = aTree("region", {
  World: {
    England: { London: {} },
    America: { NewEngland: { Boston: {}, RuralNH: {} } },
    France: {},
  },
});

const SKETCHES: readonly ClaimSketch[] = [
  { id: "c1", relation: "requires", subject: "F1", ways: [["T1"]] },
  { id: "c2", relation: "introduced", subject: "T1", region: "England", when: "1790/1799" },
  { id: "c3", relation: "introduced", subject: "T1", region: "America", when: "1809/1819" },
  { id: "c16", relation: "introduced", subject: "T1", region: "NewEngland", when: "1815" },
  { id: "c4", relation: "spread to", subject: "T1", from: "Boston", to: "RuralNH", years: [10, 20] },
  { id: "c5", relation: "requires", subject: "F2", ways: [["T2", "M1"], ["T3"]] },
  { id: "c6", relation: "introduced", subject: "T2", region: "World", when: "1700" },
  { id: "c7", relation: "introduced", subject: "M1", region: "World", when: "1720/1730" },
  { id: "c8", relation: "discontinued", subject: "M1", region: "World", when: "1740/1745" },
  { id: "c9", relation: "introduced", subject: "T3", region: "World", when: "1830/1835" },
  { id: "c10", relation: "discontinued", subject: "F3", region: "NewEngland", when: "1790/1800" },
  { id: "c10-unless", relation: "void when", of: "c10", condition: "gilded" },
  { id: "c11", relation: "requires", subject: "F4", ways: [["T1"], ["T9"]] },
  { id: "c12", relation: "requires", subject: "F5", ways: [["F6"]] },
  { id: "c13", relation: "requires", subject: "F6", ways: [["F5"]] },
  { id: "c14", relation: "introduced", subject: "F6", region: "World", when: "1750" },
  { id: "c15", relation: "requires", subject: "F7", ways: [["T3"]], closed: false },
];

/** The claims of the vectors: introduced claims physical, discontinued ones practice. */
export const CLAIMS: readonly Claim[] = SKETCHES.map(aClaim);

/** The same graph for the vector of a lag: T1 dated in Boston alone. */
export const CLAIMS_WITH_LAG: readonly Claim[] = [
  ...CLAIMS.filter(({ id }) => !["c3", "c16"].includes(id)),
  aClaim({ id: "c17", relation: "introduced", subject: "T1", region: "Boston", when: "1812/1814" }),
];
