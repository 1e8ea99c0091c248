import type { ClaimLineFragment } from "./ClaimLine.graphql.ts";

/** Where a claim is meant to hold, in a few words: "New England, chests of drawers"; "everywhere" if it names nothing. */
export function scopeInWords({ region, form, part }: Pick<ClaimLineFragment, "region" | "form" | "part">) {
  const named = [region?.label, form?.label, part?.label].filter((label) => label !== undefined);
  return named.length === 0 ? "everywhere" : named.join(", ");
}
