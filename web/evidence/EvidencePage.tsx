import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { Link } from "wouter";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { EvidencePageDocument } from "./EvidencePage.graphql.ts";

/** The way into the evidence: search, and browse by kind. */
export function EvidencePage() {
  const [words, setWords] = useState("");
  const { data } = useQuery(EvidencePageDocument, { variables: { words }, skip: words === "" });
  return (
    <>
      <PageHeading title="Evidence">Evidence</PageHeading>
      <label>
        Search <input value={words} onChange={(event) => setWords(event.target.value)} />
      </label>
      <ul>
        {data?.search.map(({ term }) => (
          <li key={term.id}>
            <Link href={`/terms/${term.id}`}>{term.label}</Link>
          </li>
        ))}
      </ul>
    </>
  );
}
