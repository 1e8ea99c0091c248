import { expect, it } from "vitest";
import type { Relation } from "#server/domain/claim.ts";
import { roleOfRelation } from "#server/domain/role-of-relation.ts";

it.each<[Relation, "event" | "period"]>([
  ["introduced", "event"],
  ["attested", "event"],
  ["common from", "event"],
  ["common until", "event"],
  ["discontinued", "event"],
  ["current", "period"],
  ["active", "period"],
  ["not found in", "period"],
])("[D2] the date of a claim of the relation %s is an %s", (relation, role) => {
  expect(roleOfRelation(relation)).toBe(role);
});
