import { useSuspenseQuery } from "@apollo/client/react";
import { Link } from "wouter";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { StartPageDocument } from "./StartPage.graphql.ts";

/** Where one begins: the pieces, demonstrations and one's own. */
export function StartPage() {
  const { data } = useSuspenseQuery(StartPageDocument, { variables: { first: 20 } });
  return (
    <>
      <PageHeading title="Pieces">Pieces</PageHeading>
      <ul>
        {data.examinations.edges.map(({ node }) => (
          <li key={node.id}>
            <Link href={`/pieces/${node.id}`}>{node.piece.title}</Link>
          </li>
        ))}
      </ul>
    </>
  );
}
