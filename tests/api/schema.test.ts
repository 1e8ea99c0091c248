import { readFileSync } from "node:fs";
import { assertValidSchema, isEnumType } from "graphql";
import { describe, expect, it } from "vitest";
import { printedSchema } from "#server/api/print-schema.ts";
import { buildSchema } from "#server/api/schema.ts";
import { PROBLEM_CODES } from "#server/domain/problem.ts";

describe("the schema", () => {
  it("[A1] stands in schema.graphql as it is built (else: npm run schema)", () => {
    const kept = readFileSync(new URL("../../server/api/schema.graphql", import.meta.url), "utf8");
    expect(kept).toBe(printedSchema());
  });

  it("is valid, and built anew each time", () => {
    expect(() => assertValidSchema(buildSchema())).not.toThrow();
    expect(buildSchema()).not.toBe(buildSchema());
  });

  it("[A5] knows every code of a problem", () => {
    const codes = buildSchema().getType("ProblemCode");
    if (!isEnumType(codes)) throw new Error("ProblemCode is no enum");
    expect(codes.getValues().map((value) => value.name)).toEqual([...PROBLEM_CODES].sort());
  });
});
