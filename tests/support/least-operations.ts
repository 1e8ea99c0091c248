import {
  type GraphQLInputType,
  getNamedType,
  isEnumType,
  isInputObjectType,
  isLeafType,
  isListType,
  isNonNullType,
} from "graphql";
import { buildSchema } from "#server/api/schema.ts";

const schema = buildSchema();

/** The least value that the schema takes. */
export function leastOf(type: GraphQLInputType): string {
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

/** An operation for each field of a root type, with the least that the schema takes. */
export const leastOperations = (["query", "mutation"] as const).flatMap((kind) => {
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
