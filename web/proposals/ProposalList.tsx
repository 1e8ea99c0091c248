import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import type { ProposalLineFragment } from "./ProposalsPage.graphql.ts";
import { kindWords, stateWords } from "./proposal-words.ts";
import styles from "./proposals.module.css";

interface Props {
  list: {
    readonly totalCount: number;
    readonly pageInfo: { readonly hasNextPage: boolean; readonly endCursor: string | null };
    readonly edges: readonly { readonly node: ProposalLineFragment }[];
  };
  onMore: (after: string | null) => Promise<unknown>;
  /** What stands where there is none. */
  empty: string;
}

/** Proposals, one a line: title, then what it is, where, by whom and how it stands. */
export const ProposalList = ({ list, onMore, empty }: Props) => (
  <>
    {list.totalCount === 0 ? <p className={styles["empty"]}>{empty}</p> : null}
    <ul className={styles["lines"]}>
      {list.edges.map(({ node }) => (
        <li key={node.id}>
          <TextLink to={`/house/proposals/${node.id}`} className={styles["name"] ?? ""}>
            {node.title || "(no title yet)"}
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
  </>
);
