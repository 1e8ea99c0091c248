import {
  type GraphQLInputType,
  getNamedType,
  isEnumType,
  isInputObjectType,
  isLeafType,
  isListType,
  isNonNullType,
} from "graphql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSchema } from "#server/api/schema.ts";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

const schema = buildSchema();

/** The least value that the schema takes. */
function leastOf(type: GraphQLInputType): string {
  if (isNonNullType(type)) return leastOf(type.ofType);
  if (isListType(type)) return "[]";
  if (isEnumType(type)) return type.getValues()[0]?.name ?? "";
  if (isInputObjectType(type)) {
    const needed = Object.values(type.getFields()).filter((field) => isNonNullType(field.type));
    return `{ ${needed.map((field) => `${field.name}: ${leastOf(field.type)}`).join(", ")} }`;
  }
  if (type.name === "Int" || type.name === "Float") return "1";
  return type.name === "Boolean" ? "true" : '"x"';
}

/** An operation for each field of a root type. */
const operations = (["query", "mutation"] as const).flatMap((kind) => {
  const root = kind === "query" ? schema.getQueryType() : schema.getMutationType();
  return Object.values(root?.getFields() ?? {}).map(({ name, args, type }) => {
    const given = args
      .filter((argument) => isNonNullType(argument.type) && argument.defaultValue === undefined)
      .map((argument) => `${argument.name}: ${leastOf(argument.type)}`);
    const refusal = kind === "mutation" ? "... on Refused { problems { code } }" : "";
    const selected = isLeafType(getNamedType(type)) ? "" : `{ __typename ${refusal} }`;
    return {
      ...{ kind, name },
      document: `${kind} { done: ${name}${given.length > 0 ? `(${given.join(", ")})` : ""} ${selected} }`,
    };
  });
});
const mutations = operations.filter(({ kind }) => kind === "mutation");

let house: Awaited<ReturnType<typeof openHouse>>;
let reader: Cookie;
beforeAll(async () => {
  house = await openHouse();
  reader = await house.join("reader", "rita");
});
afterAll(() => house.stop());

describe("the API where one has to sign in", () => {
  it("is tried with each of its operations", () => {
    expect(mutations.length).toBeGreaterThan(3);
    expect(operations.length - mutations.length).toBeGreaterThan(15);
  });

  it.each(operations)("[C10] does not answer nobody: $kind $name", async ({ document }) => {
    const { status, text } = await post(house.url, { query: document });
    expect([status, JSON.parse(text).errors[0].extensions.code]).toEqual([401, "NOT_SIGNED_IN"]);
    expect(JSON.parse(text).data ?? null).toBeNull();
  });

  it.each(["{ __typename }", "{ __schema { types { name } } }"])(
    "[C10] does not answer nobody: %s",
    async (query) => {
      expect((await post(house.url, { query })).status).toBe(401);
    },
  );

  it.each(mutations)("[C10] lets no reader through: $name", async ({ document }) => {
    const before = await house.store.newestWrite();
    const { text } = await post(house.url, { query: document }, reader);
    const codes = JSON.parse(text).data?.done?.problems?.map(({ code }: { code: string }) => code);
    expect([codes, text]).toEqual([["NOT_ALLOWED"], expect.any(String)]);
    expect(await house.store.newestWrite()).toBe(before);
  });

  it("[C10] answers a reader who reads", async () => {
    const { status, text } = await post(house.url, { query: "{ terms { totalCount } }" }, reader);
    expect([status, JSON.parse(text).errors]).toEqual([200, undefined]);
  });
});
