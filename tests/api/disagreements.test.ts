import { afterEach, describe, expect, it, vi } from "vitest";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { afterSeconds } from "#tests/support/after-seconds.ts";
import { aClaim } from "#tests/support/build-claim.ts";
import { openApi } from "#tests/support/open-api.ts";
import { rivalSawClaims } from "#tests/support/rival-saw-claims.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";
import { watchStore } from "#tests/support/watch-store.ts";

const RULES = "{ disagreementRules { id title means remedy count claimCount } }";
const FOUND = `query ($rule: ID, $first: Int! = 20, $after: String) {
  disagreements(rule: $rule, first: $first, after: $after) {
    totalCount pageInfo { hasNextPage endCursor }
    edges { node { id rule says years claimCount term { id } region { id } source { id } claims { id } } }
  }
}`;

afterEach(() => {
  vi.useRealTimers();
});

describe("disagreements", () => {
  it("[Q8] the rules say what they mean, what to do and how much they find", async () => {
    const { ask } = await openApi([sawGraph, rivalSawClaims]);
    const { data, errors } = await ask(RULES);
    expect(errors).toEqual([]);
    const counts = data.disagreementRules.map((rule: { id: string; count: number }) => [rule.id, rule.count]);
    expect(counts).toEqual([
      ["attested-before-introduced", 0],
      ["common-before-introduced", 0],
      // London has it by 1800, the latest claim of England from 1805 on.
      ["narrower-before-wider", 1],
      ["rivals", 1],
      ["spread-in-a-circle", 0],
      ["one-source", 1],
    ]);
    const accepted = [...sawGraph, ...rivalSawClaims].filter(
      (edit) => edit.kind === "claim" && edit.after?.status === "accepted",
    );
    for (const { claimCount } of data.disagreementRules) expect(claimCount).toBe(accepted.length);
    for (const { title, means, remedy } of data.disagreementRules)
      expect([title, means, remedy].every((words) => words.length > 10)).toBe(true);
  });

  it("[Q8] what one rule finds comes as data, as a sentence, and with its claims", async () => {
    const { ask } = await openApi([sawGraph, rivalSawClaims]);
    const { data, errors } = await ask(FOUND, { rule: "rivals" });
    expect(errors).toEqual([]);
    expect(data.disagreements.edges).toEqual([
      {
        node: {
          id: "rivals:claim.saw:claim.saw-about:claim.saw-late",
          rule: "rivals",
          says: "Circular saw: three claims of when it was introduced in England disagree, by 15 years or more.",
          ...{ years: 15, claimCount: 3, source: null },
          ...{ term: { id: "tool.circular-saw" }, region: { id: "region.england" } },
          claims: [{ id: "claim.saw" }, { id: "claim.saw-about" }, { id: "claim.saw-late" }],
        },
      },
    ]);
  });

  it("[Q8] without a rule all are listed, page by page, in the order of the rules", async () => {
    const { ask } = await openApi([sawGraph, rivalSawClaims]);
    const { data: first } = await ask(FOUND, { first: 2 });
    expect(first.disagreements).toMatchObject({
      ...{ totalCount: 3, pageInfo: { hasNextPage: true } },
      edges: [{ node: { rule: "narrower-before-wider", years: 5 } }, { node: { rule: "rivals" } }],
    });
    const { data: second } = await ask(FOUND, { first: 2, after: first.disagreements.pageInfo.endCursor });
    expect(second.disagreements).toMatchObject({
      pageInfo: { hasNextPage: false },
      edges: [{ node: { rule: "one-source", source: { id: "source.saw-book" }, claimCount: 4 } }],
    });
  });

  it.each([
    ["a rule that there is not", { rule: "no-such-rule" }],
    ["what no page gave as a cursor", { after: "nowhere" }],
  ])("[Q8] finds nothing for %s, without an error", async (_, variables) => {
    const { ask } = await openApi([sawGraph, rivalSawClaims]);
    const { data, errors } = await ask(FOUND, variables);
    expect(errors).toEqual([]);
    expect(data.disagreements.edges).toEqual([]);
  });

  it("[Q8] an empty graph has nothing to disagree about", async () => {
    const { ask } = await openApi([]);
    const { data, errors } = await ask(RULES);
    expect(errors).toEqual([]);
    expect(data.disagreementRules.every((rule: { count: number }) => rule.count === 0)).toBe(true);
  });

  it("[Q9] the graph is read once, afterwards only what a change touched, and the answer says on which revision", async () => {
    const own = aClaim({
      id: "claim.own",
      relation: "introduced",
      subject: "tool.circular-saw",
      when: "1500",
    });
    const base = openMemoryStore();
    const calls: string[] = [];
    const watched = watchStore(base, (call) => calls.push(call));
    const { ask } = await openApi([sawGraph, [{ kind: "claim", after: own }]], watched);
    const read = () => calls.splice(0).filter((call) => ["allClaims", "neighbourhood"].includes(call));
    read();
    await ask(`${RULES.slice(0, -1)} disagreements(first: 1) { totalCount } }`);
    expect(read()).toContain("allClaims");
    await ask(RULES);
    expect(read()).toEqual([]);
    const change = [
      { kind: "claim" as const, after: { ...own, id: "claim.rival" as typeof own.id, when: "1600" } },
    ];
    await base.commit({ change, by: "test", at: "2026-01-01T00:00:00Z", message: "test" } as never);
    const { data } = await ask(FOUND, { rule: "rivals" });
    expect(read()).toEqual(["neighbourhood"]);
    expect(data.disagreements).toMatchObject({ edges: [{ node: { years: 100 } }] });
    expect((await ask("{ disagreementRules { revision } }")).data.disagreementRules[0]).toEqual({
      revision: 3,
    });
  });

  it("[Q9] a reading that failed is done again by the next who asks", async () => {
    const own = aClaim({
      id: "claim.failed",
      relation: "attested",
      subject: "tool.circular-saw",
      when: "1500",
    });
    const { ask, store } = await openApi([sawGraph, [{ kind: "claim", after: own }]]);
    const { allClaims } = store;
    store.allClaims = () => {
      throw new Error("broken");
    };
    expect((await ask(RULES)).errors).toHaveLength(1);
    store.allClaims = allClaims;
    expect((await ask(RULES)).errors).toEqual([]);
  });

  it("[Q11] while they are being looked for, who asks is told how far that has come instead of waiting for it", async () => {
    const store = openMemoryStore();
    const { allClaims } = store;
    const { promise: held, resolve: goOn } = Promise.withResolvers<void>();
    store.allClaims = async function* (...asked) {
      yield* allClaims(...asked);
      await held;
    };
    const { ask } = await openApi([sawGraph, rivalSawClaims], store);
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
    const { data, errors } = await afterSeconds(
      ask("{ disagreementsMade disagreementRules { count } disagreements { totalCount } }"),
    );
    expect(errors).toEqual([]);
    expect(data).toMatchObject({ disagreementRules: null, disagreements: null });
    // All claims are read, and none is held against another yet.
    expect((await ask("{ disagreementsMade }")).data.disagreementsMade).toBe(40);
    goOn();
    const then = await ask("{ disagreementRules { count } disagreements { totalCount } }");
    expect(then.data.disagreements.totalCount).toBe(3);
    expect(then.data.disagreementRules).toHaveLength(6);
    expect((await ask("{ disagreementsMade }")).data.disagreementsMade).toBe(100);
  });
});
