import type { Change } from "#server/domain/change.ts";
import { aClaim } from "./build-claim.ts";
import { SAW_BOOK } from "./saw-graph.ts";

/** More claims about the circular saw of the saw graph: one that disagrees, one that agrees, one elsewhere, one rejected. */
export const rivalSawClaims: Change = [
  aClaim({
    id: "claim.saw-late",
    relation: "introduced",
    subject: "tool.circular-saw",
    region: "region.england",
    when: "1805/1810",
    strength: "tentative",
    citations: [{ basis: "from memory", note: "Said in the workshop." }],
  }),
  aClaim({
    id: "claim.saw-about",
    relation: "introduced",
    subject: "tool.circular-saw",
    region: "region.england",
    when: "1793~",
    citations: [{ basis: "published", source: SAW_BOOK.id, locator: "p. 40" }],
  }),
  aClaim({
    id: "claim.saw-london",
    relation: "introduced",
    subject: "tool.circular-saw",
    region: "region.london",
    when: "1800",
  }),
  aClaim({
    id: "claim.saw-misprint",
    relation: "common until",
    subject: "tool.circular-saw",
    region: "region.england",
    when: "1600",
    status: "rejected",
  }),
].map((after) => ({ kind: "claim" as const, after }));
