export interface TreeTerm {
  readonly id: string;
  readonly label: string;
  readonly broader: { readonly id: string } | null;
}
export interface TreeNode {
  readonly term: TreeTerm;
  readonly narrower: readonly TreeNode[];
}

const byLabel = (a: TreeTerm, b: TreeTerm) => a.label.localeCompare(b.label, "en");

/** Terms under their broader ones, by label. One whose broader term is not among them stands at the top. */
export function buildTree(terms: readonly TreeTerm[]): readonly TreeNode[] {
  const ids = new Set(terms.map((term) => term.id));
  const under = Map.groupBy(terms.toSorted(byLabel), ({ broader }) =>
    broader && ids.has(broader.id) ? broader.id : "",
  );
  const grow = (id: string): readonly TreeNode[] =>
    (under.get(id) ?? []).map((term) => ({ term, narrower: grow(term.id) }));
  return grow("");
}
