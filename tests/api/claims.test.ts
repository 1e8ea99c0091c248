import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const CLAIM = `
  fragment C on Claim {
    id relation says subject { id } region { id } form { id } part { id } when
    years { begin end padBegin padEnd doubtful } hardness strength status note row
    ways { terms { id } } closed objects { id } states spreadYears of { id } exceptions { id }
    citations { basis source { id text } locator note }
  }`;

const none = {
  ...{ subject: null, region: null, form: null, part: null, when: null, years: null, hardness: null },
  ...{ note: null, row: null, ways: [], closed: null, objects: [], states: [], spreadYears: null, of: null },
  ...{ exceptions: [], status: "ACCEPTED", strength: "USUAL" },
  citations: [{ basis: "COMMON_PRACTICE", source: null, locator: null, note: null }],
};

describe("claims", () => {
  it("[A2] a dated claim shows its scope, its years and what it cites", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(`${CLAIM} { claim(id: "claim.saw") { ...C } }`);
    expect(errors).toEqual([]);
    expect(data.claim).toEqual({
      ...none,
      id: "claim.saw",
      relation: "INTRODUCED",
      says: expect.stringMatching(/^Circular saw: introduced in England/),
      subject: { id: "tool.circular-saw" },
      region: { id: "region.england" },
      when: "1790",
      years: { begin: [1790, 1790], end: [1790, 1790], padBegin: 0, padEnd: 0, doubtful: false },
      hardness: "PHYSICAL",
      citations: [
        {
          basis: "PUBLISHED",
          source: { id: "source.saw-book", text: expect.stringContaining("Saws and their marks") },
          locator: "p. 12",
          note: null,
        },
      ],
    });
  });

  it("[A2] each relation shows what it leads to", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors } = await ask(`${CLAIM} {
      marks: claim(id: "claim.marks") { ...C } plain: claim(id: "claim.plain") { ...C }
      typical: claim(id: "claim.plain-saw") { ...C } confined: claim(id: "claim.confined") { ...C }
      spread: claim(id: "claim.spread") { ...C } notFound: claim(id: "claim.not-london") { ...C }
      ground: claim(id: "claim.ground") { ...C } gilded: claim(id: "claim.ground-gilded") { ...C }
    }`);
    expect(errors).toEqual([]);
    expect(data.marks).toMatchObject({
      relation: "REQUIRES",
      ways: [{ terms: [{ id: "tool.circular-saw" }] }],
      closed: true,
      years: null,
    });
    expect(data.plain).toMatchObject({
      relation: "CURRENT",
      hardness: "PRACTICE",
      years: { begin: [1750, 1750], end: [1800, 1800] },
    });
    expect(data.typical).toMatchObject({ relation: "TYPICAL_OF", objects: [{ id: "style.plain" }] });
    expect(data.confined).toMatchObject({ relation: "CONFINED_TO", objects: [{ id: "region.england" }] });
    expect(data.spread).toMatchObject({
      relation: "SPREAD_TO",
      objects: [{ id: "region.england" }, { id: "region.london" }],
      spreadYears: [0, 5],
    });
    expect(data.notFound).toMatchObject({ relation: "NOT_FOUND_IN", when: "1760/1765" });
    expect(data.ground).toMatchObject({
      relation: "INDICATES",
      states: ["LATER", "REWORKED"],
      exceptions: [{ id: "claim.ground-gilded" }],
    });
    expect(data.gilded).toMatchObject({
      relation: "VOID_WHEN",
      subject: null,
      of: { id: "claim.ground" },
      objects: [{ id: "feature.gesso" }],
    });
  });

  it("[A3] claims are listed by relation, page by page", async () => {
    const { ask } = await openApi([sawGraph]);
    const page = `query ($after: String) {
      claims(relations: [REQUIRES, INTRODUCED, INDICATES], first: 2, after: $after) {
        totalCount pageInfo { hasNextPage hasPreviousPage startCursor endCursor } edges { cursor node { id } }
      }
    }`;
    const { data: first } = await ask(page);
    expect(first.claims).toMatchObject({
      totalCount: 3,
      pageInfo: { hasNextPage: true, hasPreviousPage: false },
      edges: [{ node: { id: "claim.ground" } }, { node: { id: "claim.marks" } }],
    });
    expect(first.claims.pageInfo.startCursor).toBe(first.claims.edges[0].cursor);
    const { data: second } = await ask(page, { after: first.claims.pageInfo.endCursor });
    expect(second.claims).toMatchObject({
      totalCount: 3,
      pageInfo: { hasNextPage: false, hasPreviousPage: true },
      edges: [{ node: { id: "claim.saw" } }],
    });
  });
});
