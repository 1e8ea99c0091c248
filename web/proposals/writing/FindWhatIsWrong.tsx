import { useQuery } from "@apollo/client/react";
import { useState } from "react";
import { id, type TermId } from "#server/domain/ids.ts";
import type { TermKind } from "#web/shared/apollo/schema-types.graphql.ts";
import { TermField } from "#web/shared/terms/TermField.tsx";
import { ShowMore } from "#web/shared/ui/ShowMore.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { KINDS_OF_FIELD } from "./relation-choices.ts";
import { ClaimsOnSubjectDocument } from "./Writing.graphql.ts";
import styles from "./writing.module.css";

const ALL: readonly TermKind[] = [...(KINDS_OF_FIELD["object"] ?? []), "PART"];
const AT_ONCE = 50;
const toCorrect = (about: string): string => `/house/propose?kind=correction&about=${about}`;

/** Finds what is to be put right: a term by its name, then the term itself or one of the claims about it. */
export function FindWhatIsWrong() {
  const [term, setTerm] = useState<{ readonly id: TermId; readonly label: string }>();
  return (
    <div className={styles["fields"]}>
      <TermField
        label="What is it about?"
        kinds={ALL}
        value={term?.id}
        labelOf={() => term?.label ?? ""}
        placeholder="circular saw, drawer bottom, England …"
        onChange={(chosen, label) =>
          setTerm(chosen === undefined ? undefined : { id: id<"term">(chosen), label })
        }
      />
      {term === undefined ? (
        <p className={styles["beside"]}>
          Or open the claim, the term or the source in <TextLink to="/evidence">the evidence</TextLink>, and
          choose “Put it right” there.
        </p>
      ) : (
        <ToChoose term={term} />
      )}
    </div>
  );
}

function ToChoose({ term }: { term: { readonly id: TermId; readonly label: string } }) {
  const { data, fetchMore } = useQuery(ClaimsOnSubjectDocument, {
    variables: { id: term.id, first: AT_ONCE },
  });
  const claims = data?.term?.claims;
  return (
    <section aria-label="Which of these?" className={styles["group"]}>
      <h2>Which of these is wrong?</h2>
      <ul className={styles["several"]}>
        <li>
          <TextLink to={toCorrect(term.id)}>The term itself: {term.label}</TextLink>
        </li>
        {claims?.edges.map(({ node }) => (
          <li key={node.id}>
            <TextLink to={toCorrect(node.id)}>{node.says}</TextLink>
          </li>
        ))}
      </ul>
      {claims ? (
        <ShowMore
          list={claims}
          onMore={(after) => fetchMore({ variables: { after } })}
          label="Show more claims"
        />
      ) : null}
    </section>
  );
}
