import type { DisputeOutcome } from "../apollo/schema-types.graphql.ts";

/** How a dispute ended. */
export const outcomeWords: Readonly<Record<DisputeOutcome, string>> = {
  STANDS: "the claim stands",
  CORRECTED: "the claim was corrected",
  RETRACTED: "the claim was retracted",
  TAKEN_BACK: "taken back by whoever brought it up",
};
