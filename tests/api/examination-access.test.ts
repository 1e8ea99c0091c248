import { type GraphQLField, getNamedType, isLeafType } from "graphql";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildSchema } from "#server/api/schema.ts";
import { leastOf } from "#tests/support/least-operations.ts";
import { type Cookie, JSON_TYPE, openHouse, refusals } from "#tests/support/open-house.ts";
import { post, send } from "#tests/support/open-http.ts";
import { sawnChest } from "#tests/support/saw-graph.ts";

const CREATE = `mutation ($piece: PieceInput!, $seenBy: [ID!]) { done: createExamination(piece: $piece, seenBy: $seenBy) {
  ... on ExaminationChanged { examination { id access { isYours by { name } seenBy { name } } } } ... on Refused { problems { code path } } } }`;
const SHOW = `mutation ($id: ID!, $seenBy: [ID!]) { done: setExaminationAccess(id: $id, seenBy: $seenBy) {
  ... on ExaminationChanged { examination { id version access { isYours by { name } seenBy { name } } } }
  ... on Refused { problems { code path } } } }`;
const READ = `query ($id: ID!) { examination(id: $id) { version access { isYours by { name } seenBy { name } } }
  examinations { totalCount edges { node { id } } } }`;

let house: Awaited<ReturnType<typeof openHouse>>;
let [rita, cleo, bert]: Cookie[] = [];
beforeAll(async () => {
  house = await openHouse();
  rita = await house.join("contributor", "rita");
  cleo = await house.join("contributor", "cleo");
  bert = await house.join("reader", "bert");
});
afterAll(() => house.stop());

const ask = async (who: Cookie | undefined, query: string, variables: object = {}) => {
  const { text } = await post(house.url, { query, variables }, who as Cookie);
  expect(JSON.parse(text).errors).toBeUndefined();
  return JSON.parse(text).data;
};
const personOf = async (who: Cookie | undefined): Promise<string> => (await house.who(who as Cookie)).id;
const record = async (seenBy?: readonly string[]): Promise<string> =>
  (await ask(rita, CREATE, { piece: sawnChest, seenBy })).done.examination.id;
const chronicle = (who: Cookie | undefined, action: string, body: object) =>
  send(`${house.url}chronicle/${action}`, {
    ...{ method: "POST", headers: { ...JSON_TYPE, ...who }, body: JSON.stringify(body) },
  });

describe("[C25] who sees an examination", () => {
  it("is the whole house, until whoever recorded it says something else, and again after that", async () => {
    const id = await record();
    const sees = async (who: Cookie | undefined) => {
      const { examination, examinations } = await ask(who, READ, { id });
      const listed: readonly string[] = examinations.edges.map(
        (edge: { node: { id: string } }) => edge.node.id,
      );
      expect(examinations.totalCount).toBe(listed.length);
      expect(listed.includes(id)).toBe(examination !== null);
      return examination?.access;
    };
    const inHouse = { isYours: false, by: { name: "rita" }, seenBy: null };
    expect(await sees(bert)).toEqual(inHouse);
    expect((await ask(rita, SHOW, { id, seenBy: [] })).done.examination.access).toEqual({
      ...{ isYours: true, by: { name: "rita" }, seenBy: [] },
    });
    for (const who of [cleo, bert, house.owner]) expect(await sees(who)).toBeUndefined();
    await ask(rita, SHOW, { id, seenBy: [await personOf(bert)] });
    expect(await sees(bert)).toEqual({ ...inHouse, seenBy: [{ name: "bert" }] });
    for (const who of [cleo, house.owner]) expect(await sees(who)).toBeUndefined();
    await ask(rita, SHOW, { id });
    expect(await sees(cleo)).toEqual(inHouse);
  });

  it("is said from the beginning where it is recorded", async () => {
    const id = await record([]);
    expect((await ask(house.owner, READ, { id })).examination).toBeNull();
    expect((await ask(rita, READ, { id })).examination.access.seenBy).toEqual([]);
  });

  it("is said by nobody but who recorded it, and of what came with the house by nobody", async () => {
    const id = await record([await personOf(cleo)]);
    for (const who of [cleo, bert])
      expect((await ask(who, SHOW, { id })).done.problems[0].code).toBe("NOT_ALLOWED");
    await house.store.createExamination(
      "examination.old" as never,
      sawnChest as never,
      "2026-01-01T00:00:00Z",
    );
    expect((await ask(rita, SHOW, { id: "examination.old", seenBy: [] })).done.problems[0].code).toBe(
      "NOT_ALLOWED",
    );
    expect((await ask(bert, READ, { id: "examination.old" })).examination).toEqual({
      version: 1,
      access: null,
    });
  });

  it("is nobody who is not of the house, and not very many", async () => {
    const id = await record();
    expect((await ask(rita, SHOW, { id, seenBy: ["person.none"] })).done.problems).toEqual([
      { code: "UNKNOWN_PERSON", path: ["seenBy", "0"] },
    ]);
    const many = Array.from({ length: 51 }, (_, n) => `person.${n}`);
    expect((await ask(rita, SHOW, { id, seenBy: many })).done.problems[0].code).toBe("TOO_LARGE");
    const unfit = await ask(rita, CREATE, { piece: sawnChest, seenBy: ["house"] });
    expect(unfit.done.problems).toEqual([{ code: "UNKNOWN_PERSON", path: ["seenBy", "0"] }]);
  });
});

type Field = GraphQLField<unknown, unknown>;
const isId = (type: Field["args"][number]["type"]): boolean => String(getNamedType(type)) === "ID";
const schema = buildSchema();
/** Every question and every mutation that takes an id, asked with this one. */
const operationsOn = (["query", "mutation"] as const).flatMap((kind) => {
  const root = kind === "query" ? schema.getQueryType() : schema.getMutationType();
  const fields: readonly Field[] = Object.values(root?.getFields() ?? {});
  const takesId = ({ args }: Field) => args.some(({ type }) => isId(type));
  return fields.filter(takesId).map(({ name, args, type }) => {
    const given = args
      .filter(
        (each) => isId(each.type) || (String(each.type).endsWith("!") && each.defaultValue === undefined),
      )
      .map((each) => `${each.name}: ${givenFor(each.type)}`);
    const refusal = kind === "mutation" ? "... on Refused { problems { code message path } }" : "";
    const selected = isLeafType(getNamedType(type)) ? "" : `{ __typename ${refusal} }`;
    const needsPiece = given.some((each) => each.includes("$piece"));
    const variables = needsPiece ? "($id: ID!, $piece: PieceInput!)" : "($id: ID!)";
    return {
      name,
      document: `${kind} ${variables} { done: ${name}(${given.join(", ")}) ${selected} }`,
    };
  });
});
function givenFor(type: Field["args"][number]["type"]): string {
  const named = String(type);
  if (isId(type)) return named.startsWith("[") ? "[$id]" : "$id";
  return named === "PieceInput!" ? "$piece" : leastOf(type);
}

describe("[C25] what is not shown is as if it were not there", () => {
  const none = "examination.there-is-none";
  const answer = async (who: Cookie | undefined, document: string, id: string) => {
    const { status, text } = await post(
      house.url,
      { query: document, variables: { id, ...(document.includes("$piece") ? { piece: sawnChest } : {}) } },
      who as Cookie,
    );
    return `${status} ${text}`.replaceAll(id, "THIS");
  };

  it.each(operationsOn)("to $name", async ({ document }) => {
    const hidden = await record([]);
    const before = await house.store.newestWrite();
    for (const who of [cleo, house.owner])
      expect(await answer(who, document, hidden)).toBe(await answer(who, document, none));
    expect((await house.store.writesAfter(before, 10)).filter(({ examination }) => examination)).toEqual([]);
  });

  it("while whoever recorded it is told otherwise by each that is about examinations", async () => {
    const told = [];
    for (const { name, document } of operationsOn)
      if ((await answer(rita, document, await record([]))) !== (await answer(rita, document, none)))
        told.push(name);
    expect(told).toEqual(
      expect.arrayContaining([
        ...["examination", "node", "changeExamination", "deleteExamination"],
        ...["setExaminationAccess", "undoExamination"],
      ]),
    );
  });

  it("to signed reports, to what is followed and to the digest", async () => {
    const id = await record([await personOf(cleo)]);
    const { id: report } = JSON.parse((await chronicle(rita, "sign-report", { examination: id })).text);
    const asked = [
      ["sign-report", { examination: id }],
      ["signed-reports", { examination: id }],
      ["follow", { about: id }],
      ["signed-report", { id: report }],
      ["examine-again", { id: report }],
    ] as const;
    for (const [action, body] of asked) {
      const told = await chronicle(house.owner, action, body);
      const absent = JSON.stringify(body).replaceAll(id, none);
      const other = await chronicle(house.owner, action, JSON.parse(absent));
      expect([action, told.text.replaceAll(id, none)]).toEqual([action, other.text]);
      expect(refusals(await chronicle(cleo, action, body)), action).toEqual([]);
    }
    const pieces = async () => JSON.parse((await chronicle(cleo, "digest", {})).text).pieces;
    const followed = (await house.store.cards("follow", [`${await personOf(cleo)}~${id}`])).size;
    await ask(rita, SHOW, { id, seenBy: [] });
    expect([followed, await pieces()]).toEqual([1, []]);
    expect(refusals(await chronicle(cleo, "signed-report", { id: report }))).toEqual(["UNKNOWN_REPORT"]);
  });

  it("[C26] to the audit, which tells that something was done and not to which", async () => {
    const id = await record([]);
    const { text } = await house.act("audit", {}, house.owner);
    expect(text).not.toContain(id);
    expect(JSON.parse(text).entries[0]).toMatchObject({ did: "record examination", byName: "rita" });
    const shown = await record();
    expect((await house.act("audit", {}, house.owner)).text).toContain(shown);
  });
});
