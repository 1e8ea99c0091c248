import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import { relationHeadings, relationOrder } from "../shared/words/relation-words.ts";
import { ClaimList } from "./ClaimList.tsx";
import styles from "./reading.module.css";

/** The claims about a term, by what they tell. */
export function ClaimGroups({ claims }: { claims: readonly ClaimLineFragment[] }) {
  if (claims.length === 0)
    return (
      <p className={styles["empty"]}>
        None yet, so nothing that shows it is dated by it. What is said of broader and narrower terms stands
        on their own pages.
      </p>
    );
  return relationOrder
    .map((relation) => ({ relation, group: claims.filter((claim) => claim.relation === relation) }))
    .filter(({ group }) => group.length > 0)
    .map(({ relation, group }) => (
      <div key={relation} className={styles["group"]}>
        <h3>{relationHeadings[relation]}</h3>
        <ClaimList claims={group} />
      </div>
    ));
}
