import { Link } from "wouter";
import { useEveryTerm } from "../shared/terms/use-every-term.ts";
import { buildTree, type TreeNode } from "./build-tree.ts";
import styles from "./TermTree.module.css";

interface Props {
  /** The form in the address, kept. */
  form: string;
  part: string | null;
}

/** All kinds of part, narrower ones under their broader one; a kind chosen is read on the same page. */
export function PartTree({ form, part }: Props) {
  const kinds = useEveryTerm("PART");
  return (
    <div className={styles["tree"]}>
      <Branch nodes={buildTree(kinds)} form={form} part={part} />
    </div>
  );
}

const Branch = ({ nodes, form, part }: Props & { nodes: readonly TreeNode[] }) => (
  <ul>
    {nodes.map(({ term, narrower }) => (
      <li key={term.id}>
        <Link
          href={`/evidence/parts?form=${form}&part=${term.id}`}
          aria-current={term.id === part ? "true" : undefined}
        >
          {term.label}
        </Link>
        {narrower.length > 0 ? <Branch nodes={narrower} form={form} part={part} /> : null}
      </li>
    ))}
  </ul>
);
