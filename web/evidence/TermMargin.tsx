import { TextLink } from "../shared/ui/TextLink.tsx";
import { termKindWords } from "../shared/words/term-words.ts";
import styles from "./reading.module.css";
import type { TermPageQuery } from "./TermPage.graphql.ts";

type Term = NonNullable<TermPageQuery["term"]>;

const linked = (terms: readonly { readonly id: string; readonly label: string }[]) => (
  <ul>
    {terms.map(({ id, label }) => (
      <li key={id}>
        <TextLink to={`/terms/${id}`}>{label}</TextLink>
      </li>
    ))}
  </ul>
);

/** What stands beside a term: its kind, its neighbours in the tree, where to look for it, its match elsewhere. */
export function TermMargin({ term }: { term: Term }) {
  const narrower = term.narrower.edges.map((edge) => edge.node);
  const broader = term.broaderTerms[0];
  const { one, what } = termKindWords[term.kind];
  return (
    <dl className={styles["margin"]}>
      <div>
        <dt>Kind</dt>
        <dd>
          {one}
          <small>{what}</small>
        </dd>
      </div>
      {broader ? (
        <div>
          <dt>Broader</dt>
          <dd>{linked([broader])}</dd>
        </div>
      ) : null}
      {narrower.length > 0 ? (
        <div>
          <dt>Narrower</dt>
          <dd>
            {linked(narrower)}
            {term.narrower.pageInfo.hasNextPage ? (
              <small>
                and {term.narrower.totalCount - narrower.length} more, in the list of{" "}
                {termKindWords[term.kind].many}
              </small>
            ) : null}
          </dd>
        </div>
      ) : null}
      {term.parts.length > 0 ? (
        <div>
          <dt>{term.kind === "FORM" ? "Parts it is expected to have" : "Looked for on"}</dt>
          <dd>{linked(term.parts)}</dd>
        </div>
      ) : null}
      {term.kind === "FORM" ? (
        <div>
          <dt>Field sheet</dt>
          <dd>
            <TextLink to={`/sheets/${term.id}`}>What to look for on a piece</TextLink>
          </dd>
        </div>
      ) : null}
      {term.aat ? (
        <div>
          <dt>Art & Architecture Thesaurus</dt>
          <dd>
            {term.aat.label}, {term.aat.id}
            <small>
              {term.aat.checked
                ? "match checked by a person"
                : "match unchecked: nobody has looked it up yet"}
            </small>
          </dd>
        </div>
      ) : null}
      <div>
        <dt>Id</dt>
        <dd>
          <code>{term.id}</code>
        </dd>
      </div>
    </dl>
  );
}
