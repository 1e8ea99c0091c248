import { kindOfId } from "#server/domain/kind-of-id.ts";

/** What an id is of, as a noun. */
export const nounOf = (id: string): "term" | "claim" | "source" => kindOfId(id) ?? "term";

/** The page of a term, claim or source. */
export const pageOf = (id: string): string => `/${nounOf(id)}s/${id}`;
