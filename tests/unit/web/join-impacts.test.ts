import { describe, expect, it } from "vitest";
import { joinImpacts } from "#web/proposals/join-impacts.ts";
import type { Impact } from "#web/proposals/use-impact.ts";

const impact = (what: Partial<Impact>): Impact => ({
  ...{ revision: 3, looked: 10, reached: 77, left: 5, movedCount: 3, hidden: 1, reviewersNeeded: 1 },
  ...{ created: [], settled: [], moved: [], ...what },
});
const disagreement = { id: "d", says: "Two sources." };

describe("[J8] an impact that comes in parts", () => {
  it("adds up, and keeps what the first part alone tells", () => {
    const known = impact({ created: [disagreement] });
    const come = impact({ looked: 4, reached: 99, left: 1, movedCount: 3, hidden: 0 });
    expect(joinImpacts(known, come)).toMatchObject({
      ...{ looked: 14, reached: 99, left: 1, movedCount: 6, hidden: 1, reviewersNeeded: 2 },
      created: [disagreement],
    });
  });

  it("is nothing where the graph is another since", () => {
    const known = impact({});
    expect(joinImpacts(known, impact({ revision: 4, looked: 5, left: 0 }))).toBeUndefined();
    expect(joinImpacts(known, impact({ looked: 5, left: 0 }))).toBeDefined();
  });
});
