import { useQuery } from "@apollo/client/react";
import { TermByNameDocument } from "./writing/Writing.graphql.ts";

/** The name of a term by its id; the id where there is none. */
export function useTermName(term: string | undefined): string {
  const { data } = useQuery(TermByNameDocument, { variables: { id: term ?? "" }, skip: term === undefined });
  if (term === undefined || data === undefined) return "";
  return data.term?.label ?? term;
}
