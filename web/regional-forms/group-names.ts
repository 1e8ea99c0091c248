import type { FoundGroup } from "../shared/apollo/schema-types.graphql.ts";

/** What a region is known for, group by group, in the order read. */
export const groupNames: readonly { readonly group: FoundGroup; readonly name: string }[] = [
  { group: "PRACTICE", name: "Practices and features" },
  { group: "WOOD", name: "Woods" },
  { group: "FORM", name: "Forms made" },
  { group: "SHOP", name: "Shops" },
];
