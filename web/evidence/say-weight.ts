import type { Hardness, Relation } from "../shared/apollo/schema-types.graphql.ts";

/** What follows for a piece that goes against the claim. */
export function sayWeight(relation: Relation, hardness: Hardness, closed: boolean | null): string {
  if (relation === "ATTESTED")
    return "A record: the thing was there then. By itself it bounds nothing on a piece.";
  if (relation === "REQUIRES" && closed === false)
    return "An open list: by itself it bounds nothing on a piece.";
  if (hardness === "PRACTICE")
    return "Habit or fashion: a piece that goes against it is unusual, never impossible.";
  if (relation === "REQUIRES")
    return "A fact of making: no piece shows it that is older than what it was made with.";
  if (relation === "CONFINED_TO")
    return "A fact of place: a piece that shows it cannot be from any other region.";
  if (relation === "NOT_FOUND_IN")
    return "A fact of place: no piece for which this is meant can show it, in the years named or, if none are, ever.";
  return "The thing itself did not exist outside these years: a piece that shows it cannot be of others.";
}
