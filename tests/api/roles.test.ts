import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { leastOperations as operations } from "#tests/support/least-operations.ts";
import { type Cookie, openHouse } from "#tests/support/open-house.ts";
import { post } from "#tests/support/open-http.ts";

const mutations = operations.filter(({ kind }) => kind === "mutation");

const inWords = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

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

  it.each(mutations)(
    "[C10, C17] lets no reader through, and notes the attempt: $name",
    async ({ document, name }) => {
      const before = await house.store.newestWrite();
      const { text } = await post(house.url, { query: document }, reader);
      const codes = JSON.parse(text).data?.done?.problems?.map(({ code }: { code: string }) => code);
      expect([codes, text]).toEqual([["NOT_ALLOWED"], expect.any(String)]);
      const written = await house.store.writesAfter(before, 10);
      const { id } = await house.who(reader);
      expect(written).toMatchObject([
        { deed: { by: "program", did: `refuse to ${inWords(name)}`, about: id } },
      ]);
      expect(written[0]).not.toHaveProperty("examination");
      expect(written[0]).not.toHaveProperty("revision");
    },
  );

  it("[C10] answers a reader who reads", async () => {
    const { status, text } = await post(house.url, { query: "{ terms { totalCount } }" }, reader);
    expect([status, JSON.parse(text).errors]).toEqual([200, undefined]);
  });
});
