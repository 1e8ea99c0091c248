import { describe, expect, it } from "vitest";
import { ASSUMED } from "#server/domain/assumptions.ts";
import { id } from "#server/domain/ids.ts";
import { ASSUMED_ODDS } from "#server/domain/weighing/assumed-odds.ts";
import type { AssumedOdds, StateOdds } from "#server/domain/weighing/odds.ts";
import { readSubject } from "#server/reasoning/check.ts";
import { statesOf, weighModel } from "#server/reasoning/dates/posterior.ts";
import { modelReader } from "#server/reasoning/dates/read-model.ts";
import { shareWithin } from "#server/reasoning/dates/share-within.ts";
import { inOneGo } from "#server/reasoning/in-one-go.ts";
import { knowGraph } from "#server/reasoning/known-graph.ts";
import { weighLooks } from "#server/reasoning/looks/weigh-looks.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { neighbourhoodOf } from "#tests/support/build-neighbourhood.ts";
import { aPiece, type ObservationSketch } from "#tests/support/build-piece.ts";

const requires = (name: string, tool: string) =>
  aClaim({ id: `needs.${name}`, relation: "requires", subject: name, ways: [[tool]] });
const indicates = (name: string, states: readonly string[], cause?: string) =>
  aClaim({
    ...{ id: `says.${name}`, relation: "indicates", subject: name, states, strength: "firm" },
    ...(cause === undefined ? {} : { cause }),
  } as Parameters<typeof aClaim>[0]);

const graph = knowGraph(
  neighbourhoodOf(
    [],
    [
      aClaim({ id: "saw", relation: "introduced", subject: "saw", when: "1790/1800" }),
      aClaim({ id: "plane", relation: "introduced", subject: "plane", when: "1840" }),
      ...["arcs", "kerfs", "flecks"].map((name) => requires(name, "saw")),
      requires("scallops", "plane"),
      indicates("bright-edge", ["later"], "renewal"),
      indicates("clean-hole", ["later"], "renewal"),
      indicates("wear", ["original"]),
    ],
  ),
  ASSUMED,
);
const seen = (feature: string, more: Partial<ObservationSketch> = {}): ObservationSketch => ({
  ...{ id: `o.${feature}`, part: "back", feature },
  ...more,
});
/** Nothing shared is tried both ways, so that one thing more changes nothing else. */
const ODDS: AssumedOdds = { ...ASSUMED_ODDS, worlds: 0 };

function compare(recorded: readonly ObservationSketch[], feature: string, together: string[][] = []) {
  const parts = ["back", "side"];
  const read = (observations: readonly ObservationSketch[]) =>
    readSubject(aPiece({ parts, observations, together }), graph, ASSUMED);
  const weigh = (observations: readonly ObservationSketch[]) =>
    weighModel(modelReader(read(observations), ODDS)());
  const before = read(recorded);
  const candidate = { part: id<"part">("back"), feature: id<"term">(feature) };
  const [looked] = inOneGo(weighLooks(before, [candidate], ODDS));
  if (looked === undefined) throw new Error("nothing looked at");
  const { withSeen } = looked.looked;
  const again = weigh([...recorded, seen(feature, { id: "new" })]);
  return {
    foreseen: { claimed: withSeen.claimed / withSeen.seen, byState: withSeen.byState, seen: withSeen.seen },
    weighed: {
      claimed: shareWithin(again.years, again.model.from, before.claimed),
      states: statesOf(again, 0),
    },
    pSeen: withSeen.seen,
    byEvidence: Math.exp(again.logEvidence - weigh(recorded).logEvidence) * ODDS.detect,
  };
}

describe("[N4] what is foreseen of a look", () => {
  it.each([
    ["a thing that nothing is seen of", [], "arcs"],
    ["a second trace of one tool", [seen("arcs")], "kerfs"],
    ["a third trace, one of them absent", [seen("arcs"), seen("kerfs", { seen: "absent" })], "flecks"],
    ["a trace of another tool", [seen("arcs")], "scallops"],
    ["the same tool on another part", [seen("arcs", { part: "side" })], "kerfs"],
    ["a second sign of one cause", [seen("bright-edge")], "clean-hole"],
    ["a sign after another of no cause", [seen("bright-edge")], "wear"],
    ["a sign after dated things", [seen("arcs"), seen("scallops", { part: "side" })], "wear"],
  ] as const)("is what is weighed when it is recorded: %s", (_, recorded, feature) => {
    const { foreseen, weighed } = compare([...recorded], feature);
    expect(foreseen.claimed).toBeCloseTo(weighed.claimed, 10);
    for (const state of Object.keys(weighed.states) as (keyof StateOdds)[])
      expect(foreseen.byState[state] / foreseen.seen).toBeCloseTo(weighed.states[state], 10);
  });

  it("is as probable as the evidence becomes, times that it is found", () => {
    for (const [recorded, feature] of [
      [[], "arcs"],
      [[seen("arcs")], "kerfs"],
      [[seen("arcs")], "scallops"],
    ] as const) {
      const { pSeen, byEvidence } = compare([...recorded], feature);
      expect(pSeen).toBeCloseTo(byEvidence, 10);
    }
  });

  it("links signs over parts that are together", () => {
    const { foreseen, weighed } = compare([seen("bright-edge", { part: "side" })], "clean-hole", [
      ["back", "side"],
    ]);
    expect(foreseen.byState.later / foreseen.seen).toBeCloseTo(weighed.states.later, 10);
    expect(foreseen.claimed).toBeCloseTo(weighed.claimed, 10);
  });

  it("does not count a cause twice: the second sign of it tells nothing of the state", () => {
    const { foreseen } = compare([seen("bright-edge")], "clean-hole");
    const { weighed } = compare([seen("bright-edge")], "wear");
    const alone = compare([], "bright-edge");
    expect(foreseen.byState.later / foreseen.seen).toBeCloseTo(alone.weighed.states.later, 10);
    expect(weighed.states.later).toBeLessThan(alone.weighed.states.later);
  });
});
