import type { Change } from "#server/domain/change.ts";
import { adding, aTerm } from "./build-change.ts";
import { aClaim } from "./build-claim.ts";

/** A small graph with everything a walk runs over: three steps, a scope, exceptions of exceptions, broader terms. */
export const CHAIN: Change = adding(
  aTerm("feature.mark", { broader: "feature.trace" }),
  aTerm("feature.trace"),
  aTerm("feature.gilding"),
  aTerm("tool.saw"),
  aTerm("practice.milling"),
  aTerm("material.steel"),
  aTerm("region.world"),
  aTerm("region.england", { broader: "region.world" }),
  aTerm("region.france", { broader: "region.world" }),
  aClaim({ id: "claim.1", relation: "requires", subject: "feature.mark", ways: [["tool.saw"]] }),
  aClaim({
    id: "claim.2",
    relation: "requires",
    subject: "tool.saw",
    ways: [["practice.milling"], ["material.steel"]],
    region: "region.england",
  }),
  aClaim({
    id: "claim.3",
    relation: "requires",
    subject: "practice.milling",
    ways: [["material.steel"]],
    region: "region.france",
  }),
  aClaim({ id: "claim.4", relation: "introduced", subject: "material.steel", when: "1740" }),
  aClaim({ id: "claim.5", relation: "introduced", subject: "feature.gilding", when: "1600" }),
  aClaim({ id: "claim.x1", relation: "void when", of: "claim.4", condition: "feature.gilding" }),
  aClaim({ id: "claim.x2", relation: "void when", of: "claim.x1", condition: "feature.trace" }),
);
