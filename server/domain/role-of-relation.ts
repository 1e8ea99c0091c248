import { EVENT_RELATIONS, type Relation } from "./claim.ts";
import type { Role } from "./dating.ts";

/** The role in which the date of a claim is read: [D2] of docs/spec/1-dates.md. */
export const roleOfRelation = (relation: Relation): Role =>
  EVENT_RELATIONS.some((event) => event === relation) ? "event" : "period";
