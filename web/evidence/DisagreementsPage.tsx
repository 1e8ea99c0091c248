import { useSuspenseQuery } from "@apollo/client/react";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { DisagreementsBeingMade } from "./DisagreementsBeingMade.tsx";
import { DisagreementsPageDocument } from "./DisagreementsPage.graphql.ts";
import styles from "./DisagreementsPage.module.css";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";

/** Where the evidence is at odds with itself: each kind that is looked for, with how often it was found. */
export function DisagreementsPage() {
  const { data, refetch } = useSuspenseQuery(DisagreementsPageDocument, { fetchPolicy: "cache-and-network" });
  const { disagreementRules: rules, disagreementsMade: percent } = data;
  if (!rules) return <DisagreementsBeingMade percent={percent} onAgain={refetch} />;
  return (
    <article>
      <header className={reading["head"]}>
        <Kicker steps={[{ to: "/evidence", name: "evidence" }]} />
        <PageHeading title="Disagreements">Where the evidence disagrees</PageHeading>
        <p className={reading["note"]}>
          {rules[0]?.claimCount ?? 0} accepted claims are held against each other, at the newest revision.
          What cannot stand together, or leans on one source alone, is listed here for somebody to settle;
          nothing is settled by counting.
        </p>
      </header>
      <ul className={styles["rules"]}>
        {rules.map(({ id, title, means, count }) => (
          <li key={id}>
            <TextLink to={`/evidence/disagreements/${id}`} className={styles["name"] ?? ""}>
              {title}
            </TextLink>
            <span className={styles["count"]}>
              {count === 0 ? "looked for, none found" : `${count} found`}
            </span>
            <p className={styles["means"]}>{means}</p>
          </li>
        ))}
      </ul>
    </article>
  );
}
