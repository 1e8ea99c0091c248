import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import {
  type GraphQLArgument,
  type GraphQLInputType,
  type GraphQLNamedType,
  type GraphQLObjectType,
  getNamedType,
  isEnumType,
  isInputObjectType,
  isInterfaceType,
  isLeafType,
  isListType,
  isNonNullType,
  isObjectType,
  isUnionType,
} from "graphql";
import { afterAll, describe, expect, it } from "vitest";
import { buildSchema } from "#server/api/schema.ts";
import { isProblem } from "#server/domain/problem.ts";
import type { Store } from "#server/ports/store.ts";
import { openMemoryStore } from "#server/stores/memory/open-memory-store.ts";
import { openSqliteStore } from "#server/stores/sqlite/open-sqlite-store.ts";
import { openApi } from "#tests/support/open-api.ts";
import { sawGraph } from "#tests/support/saw-graph.ts";

const schema = buildSchema();

/** Texts that reach something, nearly do, or are odd. */
const text = fc.oneof(
  fc.constantFrom(
    "tool.circular-saw",
    "claim.saw",
    "source.saw-book",
    "region.england",
    "form.chest",
    "bottom",
  ),
  fc.constantFrom("", ".", "claim.", "examination.x", "1", "-1", "1760/1775", "175X", "saw", "\u0000", "💺"),
  fc.string({ unit: "binary", maxLength: 12 }),
);
const number = fc.oneof(
  fc.constantFrom(0, 1, 2, -1, 200, 201, 2_147_483_647),
  fc.integer({ min: -5, max: 250 }),
);

function anyValue(type: GraphQLInputType): fc.Arbitrary<string> {
  if (isNonNullType(type)) return anyValue(type.ofType);
  if (isListType(type))
    return fc.array(anyValue(type.ofType), { maxLength: 2 }).map((values) => `[${values.join(", ")}]`);
  if (isEnumType(type)) return fc.constantFrom(...type.getValues().map((value) => value.name));
  if (isInputObjectType(type)) return argumentsOf(Object.values(type.getFields())).map((list) => `{${list}}`);
  if (type.name === "Int") return number.map(String);
  if (type.name === "Boolean") return fc.constantFrom("true", "false");
  return text.map((value) => JSON.stringify(value));
}

/** Every argument that is needed, and some of the others. */
function argumentsOf(
  list: readonly Pick<GraphQLArgument, "name" | "type" | "defaultValue">[],
): fc.Arbitrary<string> {
  const each = list.map((argument) => {
    const given = anyValue(argument.type).map((value) => `${argument.name}: ${value}`);
    const isNeeded = isNonNullType(argument.type) && argument.defaultValue === undefined;
    return isNeeded ? given : fc.option(given, { nil: "" });
  });
  return fc.tuple(...each).map((given) => given.filter((one) => one !== "").join(", "));
}

/** A selection of a type, at most so many levels deep. */
function selectionOf(type: GraphQLNamedType, depth: number): fc.Arbitrary<string> {
  if (isUnionType(type) || isInterfaceType(type)) {
    const members = schema
      .getPossibleTypes(type)
      .map((member) => selectionOf(member, depth).map((inner) => `... on ${member.name} ${inner}`));
    return fc
      .subarray(members, { minLength: 1 })
      .chain((some) => fc.tuple(...some).map((inner) => `{ __typename ${inner.join(" ")} }`));
  }
  if (!isObjectType(type)) throw new Error(`Nothing can be selected of ${type.name}`);
  return fieldsOf(type, depth, 3);
}

function fieldsOf(type: GraphQLObjectType, depth: number, most: number): fc.Arbitrary<string> {
  const fields = Object.values(type.getFields()).filter(
    (field) => depth > 0 || isLeafType(getNamedType(field.type)),
  );
  return fc
    .subarray(fields, { minLength: Math.min(1, fields.length), maxLength: Math.min(most, fields.length) })
    .chain((some) =>
      fc
        .tuple(
          ...some.map((field, i) => {
            const inner = getNamedType(field.type);
            const below = isLeafType(inner) ? fc.constant("") : selectionOf(inner, depth - 1);
            return fc
              .tuple(argumentsOf(field.args), below)
              .map(
                ([given, selected]) =>
                  `${type.name}${i}: ${field.name}${given === "" ? "" : `(${given})`} ${selected}`,
              );
          }),
        )
        .map((chosen) => `{ __typename ${chosen.join(" ")} }`),
    );
}

const EXPECTED = new Set([
  "BAD_USER_INPUT",
  "QUERY_TOO_COSTLY",
  "UNKNOWN_REVISION",
  "GRAPHQL_VALIDATION_FAILED",
]);

const folder = mkdtempSync(join(tmpdir(), "scribeline-any-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function openStore(kind: "memory" | "sqlite"): Promise<Store> {
  if (kind === "memory") return openMemoryStore();
  const store = await openSqliteStore(join(folder, "any.sqlite"));
  if (isProblem(store)) throw new Error(store.message);
  return store;
}

describe.each(["memory", "sqlite"] as const)("over a store in %s", (medium) => {
  it("[A8] any operation that the schema allows is answered or refused, and never is a defect", async () => {
    const { ask, logged, store } = await openApi([sawGraph], await openStore(medium));
    const kinds = [
      ["query", schema.getQueryType()],
      ["mutation", schema.getMutationType()],
    ] as const;
    const operation = fc.oneof(
      ...kinds.map(([kind, root]) => {
        if (!root) throw new Error(`There is no ${kind}`);
        return fieldsOf(root, 4, 2).map((selection) => `${kind} ${selection}`);
      }),
    );
    await fc.assert(
      fc.asyncProperty(operation, async (document) => {
        const { errors } = await ask(document);
        const odd = errors.filter((error) => !EXPECTED.has(String(error.extensions["code"])));
        expect({ odd, logged }).toEqual({ odd: [], logged: [] });
      }),
      { numRuns: 300 },
    );
    await store.close();
  });
});
