import { useSuspenseQuery } from "@apollo/client/react";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { RevisionsPageDocument } from "./RevisionsPage.graphql.ts";

/** The states the evidence has been in. */
export function RevisionsPage() {
  const { data } = useSuspenseQuery(RevisionsPageDocument, { variables: { first: 50 } });
  return (
    <>
      <PageHeading title="Revisions">Revisions</PageHeading>
      <ol>
        {data.revisions.edges.map(({ node }) => (
          <li key={node.number}>
            {node.number} {node.message}
          </li>
        ))}
      </ol>
    </>
  );
}
