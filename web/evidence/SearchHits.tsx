import { useSuspenseQuery } from "@apollo/client/react";
import { holdsAllWords } from "../shared/terms/holds-all-words.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { EvidenceSearchDocument } from "./EvidencePage.graphql.ts";
import reading from "./reading.module.css";
import styles from "./SearchHits.module.css";
import { isNarrowed, type SearchFilter } from "./search-filter.ts";

interface Props {
  words: string;
  filter: SearchFilter;
}

/** The terms that fit some words, best first; without words all that a filter admits, by name. */
export function SearchHits({ words, filter }: Props) {
  const { kind, ...rest } = filter;
  const first = words === "" ? MOST_BY_NAME : MOST_HITS;
  const { data } = useSuspenseQuery(EvidenceSearchDocument, {
    variables: { words, kinds: kind ? [kind] : null, ...rest, first },
  });
  const hits = data.search;
  return (
    <section aria-label="Found">
      <p role="status" className={styles["count"]}>
        {hits.length === 0
          ? sayNothing(words, filter)
          : `${sayFound(hits, first, words)}${isNarrowed(filter) ? ", narrowed" : ""}`}
      </p>
      <ul className={`${reading["list"]} ${styles["hits"]}`}>
        {hits.map(({ term }) => (
          <li key={term.id}>
            <p>
              <TextLink to={`/terms/${term.id}`} className={styles["label"] ?? ""}>
                {term.label}
              </TextLink>{" "}
              <span className={styles["beside"]}>
                {termKindWords[term.kind].one}
                {term.otherLabels.length > 0 ? `, also called ${term.otherLabels.join(", ")}` : ""}
              </span>
            </p>
            {term.note ? <p className={styles["note"]}>{firstSentence(term.note)}</p> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

const MOST_HITS = 40;

const MOST_BY_NAME = 200;

function sayFound(
  hits: readonly { readonly term: Parameters<typeof holdsAllWords>[0] }[],
  first: number,
  words: string,
): string {
  const count = hits.length === 1 ? "1 term" : `${hits.length} terms`;
  const terms =
    hits.length < first ? count : words === "" ? `The first ${count} by name` : `The best ${count}`;
  if (words === "") return terms;
  if (hits.some(({ term }) => holdsAllWords(term, words))) return `${terms} for “${words}”`;
  const some = hits.length < first ? terms : `the best ${count}`;
  return `Nothing goes by “${words}”. What comes nearest by single words or letters: ${some}`;
}

function sayNothing(words: string, filter: SearchFilter): string {
  const among = filter.kind ? ` among the ${termKindWords[filter.kind].many}` : "";
  const lead = words === "" ? `Nothing${among}` : `Nothing is called “${words}”${among}`;
  if (!isNarrowed(filter)) return `${lead}. Try fewer letters, another word for it, or every kind.`;
  return `${lead}, narrowed like this. Try a broader part or region, more years, or take a filter away.`;
}

const firstSentence = (note: string) => /^.*?[.:;](?=\s|$)/.exec(note)?.[0].replace(/[:;]$/, ".") ?? note;
