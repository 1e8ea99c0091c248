import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id } from "#server/domain/ids.ts";
import type { Move } from "#server/domain/looking.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { Look } from "#server/domain/weighing/looks.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { chooseLooks } from "#server/reasoning/looks/choose-looks.ts";
import { kinIn } from "#server/reasoning/looks/kin-in.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { aTree, neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";

const indicates = (name: string, cause: string) =>
  aClaim({ id: `says.${name}`, relation: "indicates", subject: name, states: ["later"], cause });
const graph = knowGraph(
  neighbourhoodOf(aTree("feature", { saw: { round: {}, straight: {} }, plane: {} }), [
    indicates("splinters", "no wear"),
    indicates("sharp", "no wear"),
  ]),
  ASSUMED,
);

const look = (
  part: string,
  feature: string,
  bits: number,
  { state = 0, move = "nothing", voids = 0 }: { state?: number; move?: Move; voids?: number } = {},
): Look => ({
  ...{ part: id<"part">(part), feature: id<"term">(feature), bits, bitsOfState: state, move },
  ...{ pSeen: 0.2, pUnseen: 0.02, ifSeen: 0.1, ifAbsent: 0.2, alsoOn: [] },
  wouldVoid: Array.from({ length: voids }, (_, i) => ({ claim: id<"claim">(`c${i}`), findings: ["f"] })),
});
const chosen = (...looks: readonly Look[]) => chooseLooks(looks, kinIn(graph), ASSUMED_ODDS.effort);
const names = ({ next }: ReturnType<typeof chosen>) => next.map(({ part, feature }) => `${part} ${feature}`);

describe("[N8] the looks that are told", () => {
  it("put exceptions first, those that would take away most before the others", () => {
    const found = chosen(
      look("p", "much", 0.5),
      look("p", "one", 0, { voids: 1 }),
      look("q", "two", 0, { voids: 2 }),
    );
    expect(names(found)).toEqual(["q two", "p one", "p much"]);
  });

  it("take the claim and the states in turn", () => {
    const found = chosen(
      look("a", "f1", 0.03),
      look("b", "f2", 0.02),
      look("c", "f3", 0, { state: 0.4 }),
      look("d", "f4", 0, { state: 0.3 }),
    );
    expect(names(found)).toEqual(["a f1", "c f3", "b f2", "d f4"]);
  });

  it("are one of each family", () => {
    const found = chosen(look("a", "round", 0.03), look("b", "straight", 0.02), look("c", "saw", 0.01));
    expect(names(found)).toEqual(["a round"]);
    expect(found.alike).toBe(2);
  });

  it("are one of the signs of one cause, which count once", () => {
    const found = chosen(
      look("a", "splinters", 0, { state: 0.3 }),
      look("b", "sharp", 0, { state: 0.2 }),
      look("b", "plane", 0.01),
    );
    expect(names(found)).toEqual(["b plane", "a splinters"]);
  });

  it("name the other parts on which the same would tell half as much at least", () => {
    const found = chosen(look("a", "plane", 0.04), look("b", "plane", 0.03), look("c", "plane", 0.01));
    expect(found.next[0]?.alsoOn).toEqual(["b"]);
    expect(found.alike).toBe(2);
  });

  it("are three on a part, and twelve in all; the rest is counted", () => {
    const many = Array.from({ length: 30 }, (_, i) => look(`p${i % 6}`, `f${i}`, 0.5 - i / 100));
    const found = chosen(...many);
    expect(found.next).toHaveLength(12);
    for (const part of new Set(found.next.map((one) => one.part)))
      expect(found.next.filter((one) => one.part === part).length).toBeLessThanOrEqual(3);
    expect(found.next.length + found.alike + found.less).toBe(30);
  });

  it("[N7] count by the trouble", () => {
    expect(
      names(chosen(look("a", "f1", 0.03, { move: "something unfastened" }), look("b", "f2", 0.01))),
    ).toEqual(["b f2", "a f1"]);
  });

  it("leave out what tells next to nothing", () => {
    expect(names(chosen(look("a", "f1", 1e-6)))).toEqual([]);
  });
});
