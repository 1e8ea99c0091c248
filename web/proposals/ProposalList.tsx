import { type ReactNode, useMemo } from "react";
import { LOST, NewsLine } from "../shared/live/NewsLine.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import type { ProposalLineFragment } from "./ProposalsPage.graphql.ts";
import { kindWords, stateWords } from "./proposal-words.ts";
import styles from "./proposals.module.css";
import { useListNews } from "./use-list-news.ts";

interface Props {
  list: {
    readonly totalCount: number;
    readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
    readonly edges: readonly { readonly node: ProposalLineFragment }[];
  };
  onMore: (after: string | null) => Promise<unknown>;
  /** Reads the first rows anew, as many as are wanted by how many there are. */
  onRead: (wanted: (count: number) => number) => Promise<unknown>;
  /** What stands where there is none. */
  empty: ReactNode;
}

const nameOf = ({ title }: ProposalLineFragment): string => title || "(no title yet)";

/** Proposals, one a line: title, then what it is, where, by whom and how it stands. It follows what others do. */
export function ProposalList({ list, onMore, onRead, empty }: Props) {
  const seen = useMemo(
    () => ({
      count: list.totalCount,
      rows: list.edges.map(({ node }) => ({
        ...{ id: node.id, name: nameOf(node), isMine: node.isMine },
        stands: `is now ${stateWords[node.state]}`,
      })),
    }),
    [list],
  );
  const { told, isLost } = useListNews(seen, onRead);
  return (
    <>
      {list.totalCount === 0 ? <p className={styles["empty"]}>{empty}</p> : null}
      <ul className={styles["lines"]}>
        {list.edges.map(({ node }) => (
          <li key={node.id}>
            <TextLink to={`/house/proposals/${node.id}`} className={styles["name"] ?? ""}>
              {nameOf(node)}
            </TextLink>
            <p className={styles["beside"]}>
              {[
                kindWords[node.kind],
                ...(node.regions.length > 0 ? [node.regions.map(({ label }) => label).join(", ")] : []),
                node.isMine ? "by you" : `by ${sayPerson(node.by)}`,
                sayDay(node.madeAt),
                stateWords[node.state],
                ...(node.origin ? [`from ${node.origin}`] : []),
              ].join(" · ")}
            </p>
          </li>
        ))}
      </ul>
      <ShowMore list={list} onMore={onMore} label="Show more proposals" />
      <NewsLine connection={isLost ? LOST : undefined} told={[told]} />
    </>
  );
}
