import { ApolloProvider, useApolloClient, useSuspenseQuery } from "@apollo/client/react";
import type { ComponentType } from "react";
import { useLocation, useSearch } from "wouter";
import { clientAsOf } from "../../shared/apollo/client-as-of.ts";
import { askedRevision } from "../../shared/navigation/asked-revision.ts";
import { ReadingProvider } from "../../shared/navigation/reading-revision.ts";
import { OldReadingDocument } from "./OldReading.graphql.ts";
import { OldReadingNotice } from "./OldReadingNotice.tsx";
import { UnknownRevision } from "./UnknownRevision.tsx";

interface Props {
  id: string;
  page: ComponentType<{ id: string }>;
}

/** A page of a term, claim or source, as of the revision that the address asks for, with a notice; else as it stands. */
export function ReadAsOf({ id, page: Page }: Props) {
  const [path] = useLocation();
  const asked = askedRevision(path, useSearch());
  if (asked === undefined) return <Page id={id} />;
  if (typeof asked === "string") return <UnknownRevision asked={asked} id={id} />;
  return <Reading key={asked} id={id} page={Page} revision={asked} />;
}

function Reading({ id, page: Page, revision }: Props & { revision: number }) {
  const client = useApolloClient();
  const { data } = useSuspenseQuery(OldReadingDocument, {
    variables: { id, revision },
    fetchPolicy: "network-only",
  });
  if (!data.asked && revision !== 0) return <UnknownRevision asked={String(revision)} id={id} />;
  const isKnown = data.history.totalCount > 0;
  return (
    <>
      {isKnown ? (
        <OldReadingNotice id={id} revision={revision} at={data.asked?.at} newest={data.newest?.number ?? 0} />
      ) : null}
      <ApolloProvider client={clientAsOf(client, revision)}>
        <ReadingProvider value={revision}>
          <Page id={id} />
        </ReadingProvider>
      </ApolloProvider>
    </>
  );
}
