import { describe, expect, it } from "vitest";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const code = (errors: readonly { extensions: Record<string, unknown> }[]) =>
  errors.map((e) => e.extensions["code"]);

describe("an operation", () => {
  it("[A11] of more than 2,000 words and signs is refused before it is read on", async () => {
    const { ask } = await openApi([sawGraph]);
    const { data, errors, calls } = await ask(`{ revision { ${"number ".repeat(2000)} } }`);
    expect({ data, calls }).toEqual({ data: undefined, calls: [] });
    expect(errors[0]?.message).toContain("2000 tokens");
  });

  it("[A11] of fragments that multiply each other is refused", async () => {
    const { ask } = await openApi([sawGraph]);
    const bomb = Array.from(
      { length: 12 },
      (_, i) => `fragment F${i} on Query { ...F${i + 1} ...F${i + 1} }`,
    ).join(" ");
    const { errors, calls } = await ask(`{ ...F0 } ${bomb} fragment F12 on Query { revision { number } }`);
    expect(errors).toMatchObject([
      {
        message: expect.stringContaining("too many selections"),
        extensions: { code: "GRAPHQL_VALIDATION_FAILED" },
      },
    ]);
    expect(calls).toEqual([]);
  });

  it("[A12] of pages within pages is refused with its cost, before the store is asked", async () => {
    const { ask } = await openApi([sawGraph]);
    const { errors, calls } = await ask(
      "query ($n: Int = 200) { terms(first: $n) { edges { node { claims(first: $n) { edges { node { id } } } } } } }",
    );
    // 1 + 200 × (edges 1 + node 1 + claims 1 + 200 × (edges 1 + node 1))
    expect(errors).toMatchObject([{ extensions: { code: "QUERY_TOO_COSTLY", cost: 80_601, limit: 10_000 } }]);
    expect(calls).toEqual([]);
  });

  it("[A12] costs what its pages can hold, in fragments and unions too", async () => {
    const { ask } = await openApi([sawGraph], undefined, 100);
    const twenty = "terms(first: 20) { edges { node { broader { id } } } }";
    // 1 + 20 × (edges 1 + node 1 + broader 1)
    expect((await ask(`{ ${twenty} }`)).errors).toEqual([]);
    const { errors } = await ask(
      `{ ...Q a: ${twenty} } fragment Q on Query { ... on Query { b: ${twenty} } }`,
    );
    expect(errors).toMatchObject([{ extensions: { code: "QUERY_TOO_COSTLY", cost: 122 } }]);
  });

  it("[A12] may read a term, its claims and what they cite, and a whole examination", async () => {
    const { ask } = await openApi([sawGraph]);
    const { errors } = await ask(`{
      term(id: "tool.circular-saw") {
        label broaderTerms { label } narrower(first: 50) { edges { node { label } } }
        claims(first: 50) { edges { node { says citations { basis source { text } } exceptions { says } } } }
      }
    }`);
    expect(errors).toEqual([]);
  });

  it.each([0, -1, 201, 2_147_483_647])("[A3] asking for %i rows is refused", async (first) => {
    const { ask } = await openApi([sawGraph]);
    const documents = [
      "query ($first: Int!) { terms(first: $first) { totalCount } }",
      "query ($first: Int!) { examinations(first: $first) { totalCount } }",
      'query ($first: Int!) { search(words: "saw", first: $first) { score } }',
      'query ($first: Int!) { term(id: "tool.circular-saw") { claims(first: $first) { totalCount } } }',
    ];
    for (const document of documents) {
      const { errors, calls } = await ask(document, { first });
      expect(errors).toMatchObject([
        { message: expect.stringContaining("from 1 to 200"), extensions: { code: "BAD_USER_INPUT" } },
      ]);
      expect(calls).toEqual([]);
    }
  });

  it("with a variable of the wrong type is refused", async () => {
    const { ask } = await openApi([sawGraph]);
    const { errors, calls } = await ask("query ($first: Int!) { terms(first: $first) { totalCount } }", {
      first: "many",
    });
    expect(code(errors)).toEqual(["BAD_USER_INPUT"]);
    expect(calls).toEqual([]);
  });

  it("[A14] may ask what the schema is", async () => {
    const { ask } = await openApi([]);
    const { data, errors } = await ask("{ __schema { queryType { fields { name type { name } } } } }");
    expect(errors).toEqual([]);
    expect(data.__schema.queryType.fields.length).toBeGreaterThan(10);
  });
});
