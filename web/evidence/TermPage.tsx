import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TermPageDocument } from "./TermPage.graphql.ts";

/** Reads one term. */
export function TermPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(TermPageDocument, { variables: { id } });
  if (!data.term) return <NotFoundPage what="term" id={id} />;
  return <PageHeading title={data.term.label}>{data.term.label}</PageHeading>;
}
