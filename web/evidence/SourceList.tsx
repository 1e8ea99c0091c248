import { useSuspenseQuery } from "@apollo/client/react";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import reading from "./reading.module.css";
import { SaveAllSources } from "./SaveAllSources.tsx";
import { SourceListDocument } from "./SourceList.graphql.ts";
import styles from "./SourceList.module.css";

const SOURCES_AT_ONCE = 100;

/** All sources, as they are cited, with how many claims rest on each. */
export function SourceList() {
  const { data, fetchMore } = useSuspenseQuery(SourceListDocument, { variables: { first: SOURCES_AT_ONCE } });
  const { edges, totalCount } = data.sources;
  if (totalCount === 0)
    return <p className={reading["empty"]}>No sources yet. They come with the first published claims.</p>;
  return (
    <>
      <SaveAllSources />
      <ul className={`${reading["list"]} ${styles["sources"]}`}>
        {edges.map(({ node }) => (
          <li key={node.id} className={styles["source"]}>
            <TextLink to={`/sources/${node.id}`}>{node.text}</TextLink>
            <span className={styles["kind"]}>{node.kind}</span>
            <span className={styles["count"]}>
              {node.claims.totalCount === 1 ? "1 claim" : `${node.claims.totalCount} claims`}
            </span>
          </li>
        ))}
      </ul>
      <ShowMore list={data.sources} onMore={(after) => fetchMore({ variables: { after } })} />
    </>
  );
}
