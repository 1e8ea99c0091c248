import type { TermKind } from "../apollo/schema-types.graphql.ts";

/** A kind of term, one and many, and what it is in a sentence. */
export const termKindWords: Readonly<Record<TermKind, { one: string; many: string; what: string }>> = {
  FEATURE: { one: "feature", many: "features", what: "what can be seen or measured on a part" },
  PRACTICE: { one: "practice", many: "practices", what: "what was done in the shop" },
  TOOL: { one: "tool", many: "tools", what: "what it was done with" },
  HARDWARE: { one: "hardware", many: "hardware", what: "what was bought in" },
  MATERIAL: { one: "material", many: "materials", what: "woods, metals, glues, cloths" },
  FINISH: { one: "finish", many: "finishes", what: "what lies on the surface" },
  STYLE: { one: "style", many: "styles", what: "how it was meant to look" },
  FORM: { one: "form", many: "forms", what: "what kind of furniture it is" },
  REGION: { one: "region", many: "regions", what: "where it was made" },
  MAKER: { one: "maker", many: "makers", what: "workshops" },
  PART: { one: "kind of part", many: "kinds of part", what: "what furniture is put together from" },
};
