import { describe, expect, it } from "vitest";
import { aTree } from "#tests/support/build-neighbourhood.ts";
import { examineSketch, NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";

const holes = {
  id: "holes",
  relation: "indicates",
  subject: "holes",
  states: ["reused", "reworked"],
} as const;
const shrunk = { id: "shrunk", relation: "indicates", subject: "shrinkage", states: ["original"] } as const;
const seen = (id: string, feature: string, how: "present" | "absent" | "unseen" = "present") =>
  ({ id, part: "top", feature, seen: how }) as const;

describe("signs of alteration", () => {
  it("[E30] speak for their states where they are seen, however surely", () => {
    const { signs } = examineSketch([{ ...holes, strength: "firm", cause: "fixing" }], {
      observations: [{ ...seen("o", "holes"), sureness: "possible" }],
    });
    expect(signs).toEqual([
      {
        ...{
          observation: "o",
          part: "top",
          feature: "holes",
          claim: "holes",
          strength: "firm",
          sureness: "possible",
        },
        ...{ speaks: "for", states: ["reused", "reworked"], standing: "stands", because: [], voidIf: [] },
        cause: "fixing",
      },
    ]);
  });

  it("[E30] speak against an original part where every original shows them and they are looked for in vain", () => {
    const { signs } = examineSketch([holes, shrunk], {
      observations: [
        seen("a", "shrinkage", "absent"),
        seen("b", "holes", "absent"),
        seen("c", "shrinkage", "unseen"),
      ],
    });
    expect(signs).toMatchObject([{ observation: "a", speaks: "against", states: ["original"] }]);
  });

  it("[E31] are set aside by an exception that holds, with the reason, and not hidden", () => {
    const claims = [
      holes,
      { id: "old-lock", relation: "void when", of: "holes", condition: "plugged lock" },
    ] as const;
    const { signs, parts } = examineSketch(claims, {
      observations: [seen("o", "holes"), seen("p", "plugged lock")],
    });
    expect(signs).toMatchObject([
      { standing: "set-aside", because: [{ exception: "old-lock", observation: "p" }], voidIf: [] },
    ]);
    expect(parts[0]?.speaks).toBe("nothing");
  });

  it("[E32] name what would set them aside and was not looked for", () => {
    const claims = [
      holes,
      { id: "old-lock", relation: "void when", of: "holes", condition: "plugged lock" },
    ] as const;
    const alone = examineSketch(claims, { observations: [seen("o", "holes")] });
    expect(alone.signs).toMatchObject([{ standing: "stands", voidIf: [{ standing: "not-looked-for" }] }]);
    // A sign is not missed in the list of gaps because nobody dates it.
    expect(alone.gaps).toEqual([]);
  });

  it("[E31] are excused by some exceptions only in their absence", () => {
    const claims = [
      shrunk,
      { id: "young", relation: "void when", of: "shrunk", condition: "young", absenceOnly: true },
    ] as const;
    const sign = (how: "present" | "absent") =>
      examineSketch(claims, { observations: [seen("o", "shrinkage", how), seen("y", "young")] }).signs[0];
    expect(sign("absent")?.standing).toBe("set-aside");
    expect(sign("present")).toMatchObject({ standing: "stands", voidIf: [] });
  });

  it("[E30] count only where they apply at every place", () => {
    const northern = [
      { ...holes, region: "north" },
      { id: "x", relation: "introduced", subject: "holes", region: "town", when: "1700" },
    ] as const;
    const observations = [seen("o", "holes")];
    expect(examineSketch(northern, { region: "town", observations }).signs).toHaveLength(1);
    expect(examineSketch(northern, { region: "world", observations }).signs).toEqual([]);
    const kinds = [...NORTH_AND_SOUTH, ...aTree("part", { drawer: { bottom: {} } })];
    const onDrawers = [{ ...holes, part: "drawer" }] as const;
    expect(
      examineSketch(onDrawers, { parts: [{ id: "top", kind: "bottom" }], observations }, kinds).signs,
    ).toHaveLength(1);
    expect(examineSketch(onDrawers, { observations }, kinds).signs).toEqual([]);
  });

  it("[E29] change no finding", () => {
    const { findings, ruleOuts } = examineSketch([holes], { observations: [seen("o", "holes")] });
    expect(findings).toMatchObject([{ label: "silent", reason: "undated" }]);
    expect(ruleOuts).toEqual([]);
  });

  it("[E33] are in order: standing, warning, stronger", () => {
    const claims = [
      { ...holes, id: "weak", strength: "tentative" },
      { ...holes, id: "strong", strength: "certain" },
      shrunk,
      { ...holes, id: "void", strength: "certain" },
      { id: "unless", relation: "void when", of: "void", condition: "shrinkage" },
    ] as const;
    const { signs } = examineSketch(claims, { observations: [seen("o", "holes"), seen("s", "shrinkage")] });
    expect(signs.map(({ claim }) => claim)).toEqual(["strong", "weak", "shrunk", "void"]);
  });
});

describe("the summary of a part", () => {
  const claims = [
    { id: "hard", relation: "introduced", subject: "late", when: "1790" },
    { id: "soft", relation: "common until", subject: "old", when: "1740" },
    { id: "fits", relation: "introduced", subject: "fits", when: "1700" },
    holes,
    shrunk,
  ] as const;
  it.each([
    [["late", "old", "holes", "fits"], "against-hard"],
    [["old", "holes", "fits"], "against-soft"],
    [["holes", "fits"], "sign"],
    [["fits", "shrinkage"], "for"],
    [["shrinkage"], "nothing"],
    [[], "not-looked"],
  ] as const)("is the worst of what is on it: %s", (features, speaks) => {
    const observations = features.map((feature) => seen(`o-${feature}`, feature));
    expect(examineSketch(claims, { parts: ["top"], observations }).parts[0]?.speaks).toBe(speaks);
  });

  it("has the years that everything on it leaves, and what was looked at", () => {
    const observations = [
      seen("a", "late"),
      seen("b", "old"),
      seen("c", "fits", "absent"),
      { ...seen("d", "fits", "unseen"), part: "top" },
    ];
    expect(examineSketch(claims, { parts: ["top", "base"], observations }).parts).toEqual([
      {
        ...{ part: "top", speaks: "against-hard", possible: [[1790, null]], usual: [] },
        counts: { seen: 2, absent: 1, unseen: 1 },
      },
      {
        ...{ part: "base", speaks: "not-looked", possible: [[null, null]], usual: [[null, null]] },
        counts: { seen: 0, absent: 0, unseen: 0 },
      },
    ]);
  });

  it("takes the years of a part place by place", () => {
    const regional = [
      { id: "a", relation: "active", subject: "A", region: "town", when: "1700/1740" },
      { id: "a2", relation: "active", subject: "A", region: "farm", when: "1780/1800" },
      { id: "b", relation: "active", subject: "B", region: "town", when: "1780/1800" },
      { id: "b2", relation: "active", subject: "B", region: "farm", when: "1790/1800" },
      ...(["A", "B"] as const).map(
        (subject) =>
          ({
            id: `only-${subject}`,
            relation: "confined to",
            subject,
            regions: ["town", "farm"],
            hardness: "physical",
          }) as const,
      ),
    ] as const;
    const observations = [seen("o", "A"), seen("p", "B")];
    expect(examineSketch(regional, { region: "north", observations }).parts[0]?.possible).toEqual([
      [1790, 1800],
    ]);
  });
});
