import { useQuery } from "@apollo/client/react";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { ShowMore } from "#web/shared/ui/ShowMore.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import { ClaimsOnSubjectDocument } from "./Writing.graphql.ts";
import styles from "./writing.module.css";

/** What is said of a subject already, to be read before one writes. */
export function StandingClaims({ subject }: { subject: string | undefined }) {
  const { data, fetchMore } = useQuery(ClaimsOnSubjectDocument, {
    variables: { id: subject ?? "", first: 50 },
    skip: !subject,
  });
  const claims = data?.term?.claims;
  if (!subject || !claims) return null;
  if (claims.totalCount === 0) return <p className={styles["beside"]}>Nothing is said of it yet.</p>;
  return (
    <Disclosure
      summary={`Said of it already: ${claims.totalCount === 1 ? "1 claim" : `${claims.totalCount} claims`}`}
      isOpenAtFirst={claims.totalCount <= 6}
    >
      <ul className={styles["several"]}>
        {claims.edges.map(({ node }) => (
          <li key={node.id}>
            <TextLink to={`/claims/${node.id}`}>{node.says}</TextLink>
          </li>
        ))}
      </ul>
      <ShowMore
        list={claims}
        onMore={(after) => fetchMore({ variables: { after } })}
        label="Show more claims"
      />
    </Disclosure>
  );
}
