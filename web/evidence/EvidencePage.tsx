import { useEffect, useState } from "react";
import { useSearchParams } from "wouter";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { Arriving } from "../shared/ui/Arriving.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { SearchField } from "../shared/ui/SearchField.tsx";
import { Select } from "../shared/ui/Select.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { Contents } from "./Contents.tsx";
import styles from "./EvidencePage.module.css";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";
import { SearchFilters } from "./SearchFilters.tsx";
import { SearchHits } from "./SearchHits.tsx";
import { SourceList } from "./SourceList.tsx";
import { filterOfAddress, isNarrowed } from "./search-filter.ts";
import { TermTree } from "./TermTree.tsx";

/** What the list is narrowed to: a kind of term, or the sources. */
type Shelf = TermKind | "SOURCE";

const shelves: readonly { id: Shelf | "ALL"; label: string }[] = [
  { id: "ALL", label: "every kind" },
  ...(Object.keys(termKindWords) as TermKind[]).map((kind) => ({
    id: kind,
    label: termKindWords[kind].many,
  })),
];

/** The way into the evidence: search by words, or browse by kind. What is looked for stands in the address. */
export function EvidencePage() {
  const [params, setParams] = useSearchParams();
  const asked = (params.get("words") ?? "").trim();
  const [typed, setTyped] = useState(asked);
  // An address that changed by itself, as by going back, fills the field; what is being typed is ahead of the page.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each new page of hits is looked at.
  useEffect(() => setTyped(wordsOfAddress()), [asked]);
  const shelf = params.get("kind");
  const filter = filterOfAddress(params);
  const { kind } = filter;
  const look = (changes: Readonly<Record<string, string>>) =>
    setParams(
      (before) => {
        const next = new URLSearchParams(before);
        for (const [name, value] of Object.entries(changes))
          if (value === "") next.delete(name);
          else next.set(name, value);
        return next;
      },
      { replace: true },
    );
  const title = kind ? termKindWords[kind].many : shelf === "SOURCE" ? "sources" : "Evidence";
  return (
    <>
      <header className={reading["head"]}>
        {title === "Evidence" ? null : <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />}
        <PageHeading key={title} title={title}>
          {title}
        </PageHeading>
        {title === "Evidence" ? (
          <p className={reading["note"]}>
            Terms name what can be seen, done, bought or made; claims tie them to each other, to places and to
            years; every claim says where it comes from.
          </p>
        ) : kind ? (
          <p className={reading["note"]}>{sentence(termKindWords[kind].what)}</p>
        ) : null}
      </header>
      {shelf === "SOURCE" ? null : (
        <search className={styles["search"]}>
          <SearchField
            label="Search the terms"
            value={typed}
            onChange={(value) => {
              setTyped(value);
              look({ words: value });
            }}
            autoComplete="off"
          />
          <Select
            label="Kind"
            choices={shelves}
            value={kind ?? "ALL"}
            onChange={(value) => look({ kind: value === "ALL" ? "" : value })}
          />
          <div className={styles["narrow"]}>
            <SearchFilters filter={filter} onChange={look} />
          </div>
        </search>
      )}
      <Arriving until={<Waiting what="what is asked for" isPage />}>
        {(asked !== "" || isNarrowed(filter)) && shelf !== "SOURCE" ? (
          <SearchHits words={asked} filter={filter} />
        ) : kind ? (
          <TermTree kind={kind} />
        ) : shelf === "SOURCE" ? (
          <SourceList />
        ) : (
          <Contents />
        )}
      </Arriving>
    </>
  );
}

const wordsOfAddress = () => new URLSearchParams(window.location.search).get("words") ?? "";
const sentence = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
