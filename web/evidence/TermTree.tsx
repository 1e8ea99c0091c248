import { useSuspenseQuery } from "@apollo/client/react";
import type { TermKind } from "../shared/apollo/schema-types.graphql.ts";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import { buildTree, type TreeNode } from "./build-tree.ts";
import reading from "./reading.module.css";
import { TermTreeDocument } from "./TermTree.graphql.ts";
import styles from "./TermTree.module.css";

const TERMS_AT_ONCE = 200;

const Branch = ({ nodes }: { nodes: readonly TreeNode[] }) => (
  <ul>
    {nodes.map(({ term, narrower }) => (
      <li key={term.id}>
        <TextLink to={`/terms/${term.id}`}>{term.label}</TextLink>
        {narrower.length > 0 ? <Branch nodes={narrower} /> : null}
      </li>
    ))}
  </ul>
);

/** All terms of a kind, narrower ones under their broader one. */
export function TermTree({ kind }: { kind: TermKind }) {
  const { data, fetchMore } = useSuspenseQuery(TermTreeDocument, {
    variables: { kinds: [kind], first: TERMS_AT_ONCE },
  });
  const { edges, totalCount } = data.terms;
  if (totalCount === 0)
    return (
      <p className={reading["empty"]}>
        No {termKindWords[kind].many} yet. They come with the first claims that name them.
      </p>
    );
  return (
    <>
      <div className={styles["tree"]}>
        <Branch nodes={buildTree(edges.map((edge) => edge.node))} />
      </div>
      <ShowMore list={data.terms} onMore={(after) => fetchMore({ variables: { after } })} />
    </>
  );
}
