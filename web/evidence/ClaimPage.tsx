import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ClaimPageDocument } from "./ClaimPage.graphql.ts";

/** Reads one claim. */
export function ClaimPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(ClaimPageDocument, { variables: { id } });
  if (!data.claim) return <NotFoundPage what="claim" id={id} />;
  return <PageHeading title={data.claim.says}>{data.claim.says}</PageHeading>;
}
