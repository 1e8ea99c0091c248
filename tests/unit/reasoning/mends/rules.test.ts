import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import { priceOf, pricesOf } from "#server/reasoning/mends/prices.ts";
import type { ClaimSketch } from "#tests/support/build-claim.ts";
import { aTerm } from "#tests/support/build-neighbourhood.ts";
import type { ObservationSketch } from "#tests/support/build-piece.ts";
import { NORTH_AND_SOUTH } from "#tests/support/examine-sketch.ts";
import { wordsOf } from "#tests/support/mend-instance.ts";
import { listedTexts, mendSketch, mendText, subjectOfSketch } from "#tests/support/mend-sketch.ts";

const since = (subject: string, when: string, rest: Partial<ClaimSketch> = {}): ClaimSketch => ({
  ...{ id: `${subject}-since`, relation: "introduced", subject, when },
  ...rest,
});
const until = (subject: string, when: string, rest: Partial<ClaimSketch> = {}): ClaimSketch => ({
  ...{ id: `${subject}-until`, relation: "discontinued", subject, when, hardness: "physical" },
  ...rest,
});
const on = (...pairs: readonly (readonly [string, string])[]): readonly ObservationSketch[] =>
  pairs.map(([part, feature]) => ({ id: `${part}-${feature}`, part, feature }));

describe("levels", () => {
  const claims = [since("A", "1800"), { ...since("B", "1800"), relation: "common from" } as const];

  it("[M1] saves what is impossible from physical proofs, and what is unusual from all", () => {
    const { possible, usual } = mendSketch(claims, { observations: on(["top", "A"], ["foot", "B"]) });
    expect(mendText(possible.best)).toBe("850 later(top)");
    expect(mendText(usual.best)).toBe("1700 later(foot) + later(top)");
    expect([possible.level, usual.level]).toEqual(["physical", "practice"]);
  });

  it("[M1] gives nothing up where nothing is at odds", () => {
    const { usual } = mendSketch([since("A", "1700")], { observations: on(["top", "A"]) });
    expect(mendText(usual.best)).toBe("0 nothing");
    expect(usual).toMatchObject({ proved: true, lowerBound: 0, perPart: [], more: false });
    expect(usual.movedDate).toBeUndefined();
  });

  it("[M1] lets signs pass", () => {
    const sign: ClaimSketch = { id: "s", relation: "indicates", subject: "A", states: ["later"] };
    expect(mendText(mendSketch([sign], { observations: on(["top", "A"]) }).usual.best)).toBe("0 nothing");
  });
});

describe("prices", () => {
  it("[M2] are thousandths of a decade of odds, halves up, never below 0", () => {
    expect(priceOf(0.6, 0.37)).toBe(210);
    expect(priceOf(0.6, 0.03)).toBe(1301);
    expect(priceOf(0.998, 0.002)).toBe(2698);
    expect(priceOf(0.8, 0.2)).toBe(602);
    expect(priceOf(0.98, 0.02)).toBe(1690);
    expect(priceOf(0.15, 0.84)).toBe(0);
    expect(priceOf(1, 0)).toBeUndefined();
    expect(priceOf(10 ** 0.0005, 1)).toBe(1);
  });

  it("[M2] come from the odds of the kind of part, of the sighting and of the claim", () => {
    const terms = [...NORTH_AND_SOUTH, aTerm("part.handle", "part"), aTerm("part.carcase", "part")];
    const subject = subjectOfSketch(
      [since("A", "1800", { strength: "certain" }), since("B", "1800?", { strength: "tentative" })],
      {
        parts: [
          { id: "handle", kind: "part.handle" },
          { id: "side", kind: "part.carcase" },
          { id: "plate", kind: "part.handle" },
        ],
        together: [["plate", "side"]],
        observations: [
          { id: "o1", part: "handle", feature: "A", sureness: "probable" },
          { id: "o2", part: "side", feature: "B", sureness: "possible" },
        ],
      },
      terms,
    );
    const prices = pricesOf(subject, ASSUMED_ODDS);
    expect([prices.later([id("handle")]), prices.reused([id("handle")])]).toEqual([210, 1301]);
    // Together with a side, a plate has the odds of the side: .95 to .03.
    expect(prices.later([id("plate"), id("side")])).toBe(1501);
    expect([prices.misread(id("o1")), prices.misread(id("o2"))]).toEqual([954, 368]);
    // .57 to .05.
    expect(prices.altered(id("o1"))).toBe(1057);
    // .998 to .002; .8 x .7 to the rest.
    expect([prices.claim(id("A-since")), prices.claim(id("B-since"))]).toEqual([2698, 105]);
    expect([prices.assumption, prices.separate]).toEqual([368, 1690]);
  });

  it("[M2] offers nothing that has no chance", () => {
    const never = { later: 0, original: 1, reused: 0 };
    const { possible } = mendSketch(
      [since("A", "1800")],
      { observations: on(["top", "A"]) },
      { otherwise: never, reworked: 0 },
    );
    expect(listedTexts(possible)).toEqual(["1279 A-since", "1690 misread(top-A)"]);
  });

  it("[M2] prices rivals as all of them", () => {
    const rivals = [since("A", "1800", { id: "r1" }), since("A", "1810", { id: "r2" })];
    const { possible } = mendSketch(rivals, { observations: on(["top", "A"]) });
    expect(listedTexts(possible)).toContain("2558 r1|r2");
  });
});

describe("states and years", () => {
  it("[M3] has a part of too early a kind come from an older piece, at one year for all on it", () => {
    const claims = [until("A", "1700"), until("B", "1690"), since("C", "1695")];
    const { possible } = mendSketch(claims, { observations: on(["top", "A"], ["top", "C"]) });
    expect(mendText(possible.best)).toBe("1279 A-until");
    expect(listedTexts(possible)).toContain("1452 reused(top)");
    const torn = mendSketch(claims, { observations: on(["top", "B"], ["top", "C"]) }).possible;
    expect(listedTexts(torn)).not.toContain("1452 reused(top)");
    expect(listedTexts(torn)).toContain("1279 B-until");
  });

  it("[M3] lets nothing be later than the examination", () => {
    const sketch = (examined: number) =>
      listedTexts(mendSketch([since("A", "1900")], { examined, observations: on(["top", "A"]) }).possible);
    expect(sketch(1950)).toContain("850 later(top)");
    expect(sketch(1890)).toEqual(["1279 A-since", "1690 misread(top-A)"]);
  });

  it("[M3] has parts together later as one, for one price", () => {
    const { possible } = mendSketch([since("A", "1800")], {
      observations: on(["top", "A"], ["leaf", "A"]),
      together: [["leaf", "top"]],
    });
    expect(mendText(possible.best)).toBe("850 later(leaf,top)");
    expect(possible.perPart.map(({ parts }) => parts)).toEqual([["leaf", "top"]]);
  });

  it("[M3] gives up only claims for what is claimed of the whole", () => {
    const { usual } = mendSketch([{ id: "s", relation: "current", subject: "style", when: "1800/1820" }], {
      style: "style",
    });
    expect(listedTexts(usual)).toEqual(["1279 s"]);
    expect(usual.perPart).toMatchObject([{ parts: [], options: [{ price: 1279 }] }]);
  });

  it("[M4] takes a sighting for later work only if it could have been done later", () => {
    const late = mendSketch([since("A", "1800")], { observations: on(["top", "A"]) });
    expect(listedTexts(late.possible)).toContain("1208 altered(top-A)");
    const early = mendSketch([until("A", "1700")], { observations: on(["top", "A"]) });
    expect(listedTexts(early.possible).filter((text) => text.includes("altered"))).toEqual([]);
    // On a part from an older piece, the same work counts from that part on.
    const both = mendSketch([until("A", "1650"), until("B", "1700"), since("B", "1690")], {
      observations: on(["top", "A"], ["top", "B"]),
    });
    expect(listedTexts({ ...both.possible })).toContain("2660 altered(top-B) + reused(top)");
  });

  it("[M4] takes one year of later work for all windows of a sighting", () => {
    const claims = [since("A", "1800"), until("A", "1700", { id: "A-until" })];
    const { possible } = mendSketch(claims, { observations: on(["top", "A"]) });
    const altered = listedTexts(possible).filter((text) => text.includes("altered"));
    expect(altered).toEqual(["2487 A-until + altered(top-A)"]);
  });

  it("[M5] pays a misreading once for all its windows, and a claim once for all parts", () => {
    const claims: ClaimSketch[] = [
      { id: "n", relation: "requires", subject: "A", ways: [["T"]] },
      since("T", "1800"),
      since("A", "1810"),
    ];
    const one = mendSketch(claims, { observations: on(["top", "A"]) }).possible;
    expect(listedTexts(one)).toContain("1690 misread(top-A)");
    const two = mendSketch([since("A", "1800")], { observations: on(["top", "A"], ["foot", "A"]) }).possible;
    expect(mendText(two.best)).toBe("1279 A-since");
    expect(two.perPart.map(({ options }) => options.find(({ price }) => price === 1279)?.shared)).toEqual([
      ["A-since"],
      ["A-since"],
    ]);
  });
});

describe("places and pairs", () => {
  it("[M6] holds at one place for the whole piece", () => {
    const claims = [
      since("A", "1800", { region: "town" }),
      since("B", "1800", { region: "farm" }),
      since("A", "1700", { id: "A-old", region: "farm" }),
      since("B", "1700", { id: "B-old", region: "town" }),
    ];
    const { possible } = mendSketch(claims, {
      region: "north",
      observations: on(["top", "A"], ["foot", "B"]),
    });
    // Each fits somewhere, both nowhere but where the claims do not reach.
    const places = new Set(possible.listed.map(({ place }) => place.region));
    expect(places.size).toBeGreaterThan(0);
    const only = mendSketch(
      [
        ...claims,
        since("A", "1800", { region: "north", id: "A-north" }),
        since("B", "1800", { region: "north", id: "B-north" }),
      ],
      { region: "north", observations: on(["top", "A"], ["foot", "B"]) },
    ).possible;
    expect(only.best?.price).toBe(850);
    expect(
      only.listed
        .filter(({ price }) => price === 850)
        .map(({ givenUp, place }) => `${wordsOf(givenUp)} ${place.region}`),
    ).toEqual(["later(foot) farm", "later(top) town"]);
  });

  it("[M7] has one of two separate parts be of another making, or not separate after all", () => {
    const { possible } = mendSketch([], { parts: ["foot", "top"], separate: [["top", "foot"]] });
    expect(listedTexts(possible)).toEqual([
      "850 later(foot)",
      "850 later(top)",
      "1452 reused(foot)",
      "1452 reused(top)",
      "1690 not-separate(foot,top)",
    ]);
    expect(possible.perPart).toMatchObject([{ parts: ["foot", "top"] }]);
  });

  it("[M7] asks for nothing where a window has one of them later already", () => {
    const { possible } = mendSketch([since("A", "1800")], {
      parts: ["foot"],
      observations: on(["top", "A"]),
      separate: [["foot", "top"]],
    });
    expect(mendText(possible.best)).toBe("850 later(top)");
  });
});

describe("looking again", () => {
  it("[M8] gives up the wider claim too where the narrower one overrode it", () => {
    const claims = [since("A", "1800", { region: "north" }), since("A", "1790", { id: "A-world" })];
    const { possible } = mendSketch(claims, { region: "town", observations: on(["top", "A"]) });
    const texts = listedTexts(possible);
    expect(texts).not.toContain("1279 A-since");
    expect(texts).toContain("2558 A-since + A-world");
  });

  it("[M8] shows a claim alone where what comes back fits", () => {
    const claims = [since("A", "1800", { region: "north" }), since("A", "1700", { id: "A-world" })];
    const { possible } = mendSketch(claims, { region: "town", observations: on(["top", "A"]) });
    expect(listedTexts(possible)).toContain("1279 A-since");
  });

  it("[M8] brings back what a sighting excused, once that is misread", () => {
    const claims: ClaimSketch[] = [
      since("A", "1800"),
      { id: "but", relation: "void when", of: "A-since", condition: "G" },
      until("G", "1700"),
    ];
    const { possible } = mendSketch(claims, { observations: on(["top", "A"], ["top", "G"]) });
    const texts = listedTexts(possible);
    expect(texts).toContain("1279 G-until");
    expect(texts).not.toContain("1690 misread(top-G)");
    expect(texts).toContain("2540 later(top) + misread(top-G)");
  });
});

describe("order and other years", () => {
  it("[M11] tells the years in which the cheapest holds, and nothing where the date does not matter", () => {
    const { possible } = mendSketch([since("A", "1800"), until("B", "1850")], {
      observations: on(["top", "A"], ["foot", "B"]),
    });
    expect(possible.movedDate?.years).toEqual([[1800, 1850]]);
    expect(mendText(possible.movedDate?.mend)).toBe("0 nothing");
    const apart = mendSketch([since("A", "1800"), until("A", "1790")], { observations: on(["top", "A"]) });
    expect(apart.possible.best?.price).toBe(1279);
    expect(apart.possible.movedDate).toBeUndefined();
  });

  it("[M12] names the earliest year under which it holds", () => {
    const { possible } = mendSketch([since("A", "1770")], { observations: on(["top", "A"]) });
    expect(mendText(possible.best)).toBe("0 nothing");
    expect(possible.best?.year).toBe(1770);
  });
});
