import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { buildSchema, isAbstractType } from "graphql";
import { describe, expect, it } from "vitest";
import { possibleTypes } from "#web/shared/apollo/possible-types.ts";

const path = fileURLToPath(new URL("../../../server/api/schema.graphql", import.meta.url));

describe("[P3] the types behind interfaces and unions", () => {
  it("are those of the schema", () => {
    const schema = buildSchema(readFileSync(path, "utf8"));
    const abstract = Object.values(schema.getTypeMap()).filter(isAbstractType);
    const theirs = abstract.map((type) => [
      type.name,
      schema
        .getPossibleTypes(type)
        .map(({ name }) => name)
        .sort(),
    ]);
    const ours = Object.entries(possibleTypes).map(([name, types]) => [name, types.toSorted()]);
    expect(ours.sort()).toEqual(theirs.sort());
  });
});
