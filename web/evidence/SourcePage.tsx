import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { SourcePageDocument } from "./SourcePage.graphql.ts";

/** Reads one source. */
export function SourcePage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(SourcePageDocument, { variables: { id } });
  if (!data.source) return <NotFoundPage what="source" id={id} />;
  return <PageHeading title={data.source.text}>{data.source.text}</PageHeading>;
}
