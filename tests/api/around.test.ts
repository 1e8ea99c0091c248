import { describe, expect, it } from "vitest";
import { aroundGraph } from "#tests/support/around-graph.ts";
import { openApi } from "#tests/support/open-api.ts";

const AROUND = `unread
  members { term { id } step reachedFrom reachedBy datedCount dated(first: 1) { id } }
  links { id from to kind hardness claimCount claims { id citations { basis } } }
  leftOut { from kind isOutgoing count terms(first: 2) { label } }`;
const ask = async (args: string, id = "tool.mill", revision = "") => {
  const api = await openApi([
    aroundGraph.filter(({ kind }) => kind === "term"),
    aroundGraph.filter(({ kind }) => kind !== "term"),
  ]);
  return api.ask(`{ term(id: "${id}"${revision}) { around${args} { ${AROUND} } } }`);
};

describe("around a term", () => {
  it("[A60] gives members, links with their claims, and what is left out by group", async () => {
    const { data, errors } = await ask("(each: 2)");
    expect(errors).toEqual([]);
    const { members, links, leftOut, unread } = data.term.around;
    expect(unread).toBe(0);
    expect(members[0]).toEqual({
      ...{ term: { id: "tool.mill" }, step: 0, reachedFrom: null, reachedBy: null },
      ...{ datedCount: 1, dated: [{ id: "claim.mill-here" }] },
    });
    expect(members).toContainEqual({
      ...{ term: { id: "feature.mark-07" }, step: 1, reachedFrom: "tool.mill" },
      ...{
        reachedBy: "feature.mark-07 requires tool.mill",
        datedCount: 2,
        dated: [{ id: "claim.dated-there" }],
      },
    });
    expect(links).toContainEqual({
      ...{ id: "feature.mark-07 requires tool.mill", from: "feature.mark-07", to: "tool.mill" },
      ...{ kind: "REQUIRES", hardness: "PHYSICAL", claimCount: 2 },
      claims: ["claim.mark-07", "claim.mark-again"].map((id) => ({
        id,
        citations: [{ basis: "COMMON_PRACTICE" }],
      })),
    });
    expect(leftOut).toEqual([
      {
        from: "tool.mill",
        kind: "REQUIRES",
        isOutgoing: false,
        count: 10,
        terms: [{ label: "mark 1" }, { label: "mark 2" }],
      },
    ]);
  });

  it("[A60] reads as often for a large neighbourhood as for a small one, and at two steps once more a neighbour", async () => {
    const small = await ask("(each: 1)");
    const large = await ask("(each: 20)");
    expect(large.calls.length).toBe(small.calls.length);
    const further = await ask("(steps: 2, each: 20)");
    const walked = large.data.term.around.members.length - 1;
    expect(further.calls.length - large.calls.length).toBeLessThanOrEqual(walked * 4);
    expect(further.data.term.around.members.length).toBeGreaterThan(large.data.term.around.members.length);
  });

  it("[A4] is read on the revision asked for", async () => {
    const { data } = await ask("", "tool.mill", ", revision: 1");
    const { members } = data.term.around;
    expect(members.map(({ reachedBy }: { reachedBy: string | null }) => reachedBy)).toEqual([
      null,
      "tool.mill broader tool.machine",
      "tool.small-mill broader tool.mill",
    ]);
  });

  it.each(["(steps: 3)", "(steps: 0)", "(each: 0)", "(each: 61)"])("[A60] refuses %s", async (args) => {
    const { errors, data } = await ask(args);
    expect(errors).toMatchObject([{ extensions: { code: "BAD_USER_INPUT" } }]);
    expect(data?.term ?? null).toBeNull();
  });
});
