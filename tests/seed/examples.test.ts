import { beforeAll, describe, expect, it } from "vitest";
import { openSeedExaminer, seedChange } from "#tests/support/seed-examiner.ts";
import { turnPiece } from "#web/answers/turn-piece.ts";
import { EXAMPLES, type Example } from "#web/method/examples.ts";
import { pathsToWalk } from "#web/method/paths-to-walk.ts";
import { FEATURES_TO_WALK } from "#web/method/walks.ts";
import type { StripMark } from "#web/strips/strip-row.ts";

let examine: Awaited<ReturnType<typeof openSeedExaminer>>;
beforeAll(async () => {
  examine = await openSeedExaminer(await seedChange());
});

const exampleOf = (id: string): Example => {
  const example = EXAMPLES.find((each) => each.id === id);
  if (!example) throw new Error(`No example ${id}`);
  return example;
};

/** Marks of the strips of an example as it is, or after one of its turns; by observation. */
async function marks(id: string, turn?: string): Promise<Record<string, StripMark>> {
  const { piece, turns } = exampleOf(id);
  const change = turns.find((each) => each.id === turn)?.change ?? {};
  const { groups } = await examine(turnPiece(piece, change));
  return Object.fromEntries(
    groups.flatMap(({ rows }) =>
      rows.flatMap((row) => (row.observation === undefined ? [] : [[row.observation, row.mark]])),
    ),
  );
}

describe("the examples of how a finding is made", () => {
  it("[L1] show what their titles say, on the seed graph", async () => {
    expect(await marks("hard-or-soft")).toEqual({ screw: "against-hard", arcs: "against-soft" });
    expect(await marks("absent")).toEqual({ screw: "silent" });
    expect(await marks("absent", "t-unseen")).toEqual({ screw: "silent" });
    expect(await marks("absent", "t-seen")).toEqual({ screw: "against-hard" });
    expect(await marks("absent-yet-a-sign")).toEqual({ shrunk: "sign" });
    expect(await marks("absent-yet-a-sign", "t-quartered")).toMatchObject({ shrunk: "sign-set-aside" });
    expect(await marks("absent-yet-a-sign", "t-shrunk")).toEqual({ shrunk: "sign-of-age" });
    expect(await marks("elsewhere")).toEqual({ grain: "against-soft" });
    expect(await marks("elsewhere", "t-usa")).toEqual({ grain: "silent" });
    expect(await marks("elsewhere", "t-1735")).toEqual({ grain: "for" });
  });

  it("[L1] leave a dispute open only where the claim lies between the two dates", async () => {
    const { piece, turns } = exampleOf("disputed");
    const open = async (turn?: string) => {
      const change = turns.find((each) => each.id === turn)?.change ?? {};
      const { report } = await examine(turnPiece(piece, change));
      const finding = report.findings.find(({ id }) => id === "screw");
      return { label: finding?.label, openOnlyBy: finding?.openOnlyBy.length };
    };
    expect(await open()).toEqual({ label: "consistent", openOnlyBy: 1 });
    expect(await open("t-before")).toEqual({ label: "contradictory", openOnlyBy: 0 });
    expect(await open("t-after")).toEqual({ label: "consistent", openOnlyBy: 0 });
  });

  it("[L1] excuse what was looked for and found, and nothing else", async () => {
    expect(await marks("excused")).toEqual({ rough: "sign" });
    expect(await marks("excused", "t-gesso")).toMatchObject({ rough: "sign-set-aside" });
    expect(await marks("excused", "t-perhaps")).toMatchObject({ rough: "sign" });
    expect(await marks("excused", "t-bare")).toMatchObject({ rough: "sign" });
    expect(await marks("repaired")).toEqual({ nail: "against-hard" });
    expect(await marks("repaired", "t-older")).toMatchObject({ nail: "silent" });
    expect(await marks("repaired", "t-first")).toMatchObject({ nail: "against-hard" });
  });

  it("[L1] do not discriminate between dates, until something with a beginning is seen", async () => {
    for (const turn of [undefined, "t-1690", "t-1890"])
      expect(new Set(Object.values(await marks("undecided", turn))), turn).toEqual(new Set(["silent"]));
    expect(await marks("undecided", "t-arcs")).toMatchObject({ arcs: "against-soft", tails: "silent" });
  });

  it("[L2] change something at every turn but those that are to change nothing", async () => {
    const same = ["t-unseen", "t-1690", "t-1890", "t-perhaps", "t-first", "t-bare", "t-1830"];
    for (const { id, piece, turns } of EXAMPLES) {
      const before = JSON.stringify(await marks(id));
      const words = (await examine(piece)).words.headline;
      for (const turn of turns.filter((each) => !same.includes(each.id))) {
        const after = await examine(turnPiece(piece, turn.change));
        expect(
          [JSON.stringify(await marks(id, turn.id)), after.words.headline],
          `${id} ${turn.id}`,
        ).not.toEqual([before, words]);
      }
    }
  });
});

describe("the features to walk", () => {
  it("[L3] go over two steps and more, one by an assumption, and one to no year at all", async () => {
    const walks = await Promise.all(
      FEATURES_TO_WALK.map(async ({ id, piece }) => {
        const { report } = await examine(piece);
        const finding = report.findings.find((each) => each.id === "seen");
        if (!finding) throw new Error(`${id} is not found`);
        return { id, label: finding.label, paths: pathsToWalk(finding) };
      }),
    );
    const all = walks.flatMap(({ paths }) => paths);
    expect(walks.filter(({ paths }) => !paths.some(({ dated }) => dated !== undefined))).toEqual([]);
    expect(Math.max(...all.map(({ via }) => via.length))).toBeGreaterThanOrEqual(2);
    expect(all.some(({ assumptions }) => assumptions.length > 0)).toBe(true);
    const silent = walks.filter(({ label }) => label === "silent");
    expect(silent.map(({ id }) => id)).toEqual(["feature.pit-saw-mark"]);
    expect(
      silent.flatMap(({ paths }) => paths.filter(({ dated }) => dated === undefined)).length,
    ).toBeGreaterThan(0);
  });
});
