import { describe, expect, it } from "vitest";
import { id } from "#server/domain/ids.ts";
import type { Span } from "#server/domain/years.ts";
import { tellingInWords } from "#server/reasoning/explain/telling-in-words.ts";
import type { Telling } from "#server/reasoning/sheet/telling.ts";
import { aClaim, type ClaimSketch } from "#tests/support/build-claim.ts";

function say(rest: Partial<Telling>, sketches: readonly ClaimSketch[] = [], claimed?: Span): string {
  const claims = new Map(sketches.map((sketch) => [sketch.id, aClaim(sketch)]));
  const telling: Telling = {
    ...{ part: id("part.top"), feature: id("arcs"), position: "front", tells: "bound" },
    ...{ possible: [[null, null]], usual: [[null, null]], isAssumed: false, strength: "usual" },
    isOfPlace: false,
    ...{ isOfForm: false, isOfChange: false, isAgainstDate: false, evenness: 1, sight: "now", kinds: 1 },
    claims: [...claims.keys()].map((claim) => id(claim)),
    ...rest,
  };
  return tellingInWords(telling, {
    labelOf: (term) => term,
    isPlace: (term) => term.endsWith("town"),
    claimOf: (claim) => claims.get(claim),
    claimed,
  });
}
const holes: ClaimSketch = { id: "holes", relation: "indicates", subject: "arcs", states: ["reworked"] };

describe("[F7] what it would mean to see a feature", () => {
  it("is its possible years, and the usual ones where they are fewer", () => {
    expect(say({ possible: [[1793, null]], usual: [[1793, null]] })).toBe("Possible 1793 or later.");
    expect(say({ possible: [[1793, null]], usual: [[1870, 1900]], isAssumed: true })).toBe(
      "Possible 1793 or later, as far as known; usual 1870 to 1900.",
    );
    expect(say({ possible: [[1867, null]], usual: [] })).toBe(
      "Possible 1867 or later; not usual here at any time.",
    );
    expect(say({ usual: [[null, 1755]] })).toBe("Usual up to 1755.");
    expect(say({ possible: [] })).toBe("Not of this place at any time.");
  });

  it("[W9] is when there was none, where a claim says no more than that", () => {
    const none: ClaimSketch = {
      id: "n",
      relation: "not found in",
      subject: "arcs",
      region: "Home",
      when: "1700/1799",
    };
    const left: Telling["usual"] = [
      [null, 1699],
      [1800, null],
    ];
    expect(say({ usual: left }, [none])).toBe("Not found there 1700 to 1799.");
    expect(say({ usual: left }, [none], [1760, 1770])).toBe(
      "Not found there 1700 to 1799. Unusual at the claimed date, in a gap, 30 years from the nearest.",
    );
    expect(say({ possible: left, usual: left }, [{ ...none, hardness: "physical" }])).toBe(
      "Not found there 1700 to 1799.",
    );
    expect(
      say(
        {
          possible: [[1680, null]],
          usual: [
            [1680, 1699],
            [1800, null],
          ],
        },
        [none],
      ),
    ).toBe("Possible 1680 or later; usual 1680 to 1699, or 1800 or later.");
  });

  it("is how far they miss the claimed date, by one year or more, on either side or in a gap", () => {
    const late: Partial<Telling> = { possible: [[1793, null]], usual: [[1793, null]] };
    expect(say(late, [], [1760, 1770])).toBe(
      "Possible 1793 or later. 23 years too late for the claimed date.",
    );
    expect(say(late, [], [1760, 1792])).toBe("Possible 1793 or later. 1 year too late for the claimed date.");
    expect(say(late, [], [1780, 1800])).toBe("Possible 1793 or later.");
    expect(say({ usual: [[null, 1755]] }, [], [1760, 1770])).toBe(
      "Usual up to 1755. Unusual at the claimed date, 5 years too early.",
    );
    expect(
      say(
        {
          usual: [
            [null, 1713],
            [1831, null],
          ],
        },
        [],
        [1760, 1770],
      ),
    ).toBe(
      "Usual up to 1713, or 1831 or later. Unusual at the claimed date, in a gap, 47 years from the nearest.",
    );
  });

  it("is what a sign speaks for, the strongest of several, and against where one of age is missing", () => {
    const firm: ClaimSketch = { ...holes, id: "firm", strength: "firm", states: ["later", "reused"] };
    expect(say({ tells: "sign" }, [holes])).toBe("Speaks for an original part worked over since.");
    expect(say({ tells: "sign" }, [holes, firm])).toBe(
      "Speaks strongly for a later part or a part taken from another piece.",
    );
    expect(say({ tells: "sign" }, [{ ...holes, states: ["original"] }])).toBe(
      "Speaks for an original part; looked for and not there, against it.",
    );
    expect(say({ tells: "sign" }, [{ ...holes, states: ["original", "reused", "reworked"] }])).toBe(
      "Speaks against a later part; looked for and not there, for one.",
    );
    expect(say({ possible: [[1793, null]], usual: [[1793, null]] }, [holes])).toBe(
      "Possible 1793 or later. Speaks for an original part worked over since.",
    );
  });

  it("is what it is typical of, places and forms each by themselves, after what it tells else", () => {
    const typical = (name: string, object: string): ClaimSketch => ({
      ...{ id: name, relation: "typical of", subject: "arcs", object },
    });
    const some = [typical("a", "Newtown"), typical("b", "stools"), typical("c", "Oldtown")];
    expect(say({ tells: "typical" }, some)).toBe(
      "Typical of Newtown and Oldtown: points there, rules nothing out. Typical of stools: points to it, rules nothing out.",
    );
    expect(say({ possible: [[1793, null]], usual: [[1793, null]] }, [typical("a", "Newtown")])).toBe(
      "Possible 1793 or later. Typical of Newtown: points there, rules nothing out.",
    );
    const record: ClaimSketch = {
      id: "r",
      relation: "attested",
      subject: "arcs",
      region: "Home",
      when: "1803",
    };
    expect(say({ tells: "typical" }, [record, typical("a", "Newtown")])).toBe(
      "On record in Home, 1803. Typical of Newtown: points there, rules nothing out.",
    );
  });

  it("is else what the claims of single places say, without their subject", () => {
    expect(
      say({ tells: "habit" }, [
        { id: "a", relation: "common from", subject: "arcs", region: "Home", when: "1790" },
        { id: "b", relation: "attested", subject: "arcs", region: "Colony", when: "1803" },
      ]),
    ).toBe("In common use in Home from 1790. On record in Colony, 1803.");
  });
});
