import type { Builder } from "../builder.ts";

/** Anything with an id of its own; the id's first word says what it is. */
export const addNode = (b: Builder) =>
  b.interfaceType("Node", {
    description: "Anything with an id of its own. Ids are readable: `tool.circular-saw`, `claim.A13`.",
    fields: (t) => ({ id: t.exposeID("id") }),
    resolveType: (node) =>
      "relation" in node ? "Claim" : "csl" in node ? "Source" : "version" in node ? "Examination" : "Term",
  });
