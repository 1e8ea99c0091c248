import { useSuspenseQuery } from "@apollo/client/react";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { DisagreementRulePageDocument } from "./DisagreementRulePage.graphql.ts";
import { DisagreementsBeingMade } from "./DisagreementsBeingMade.tsx";
import styles from "./FoundDisagreement.module.css";
import { FoundDisagreement } from "./FoundDisagreement.tsx";
import { Kicker } from "./Kicker.tsx";
import reading from "./reading.module.css";

const FOUND_AT_ONCE = 20;

/** One kind of disagreement: what it means, what to do about it, and all that was found. */
export function DisagreementRulePage({ id }: { id: string }) {
  const { data, fetchMore, refetch } = useSuspenseQuery(DisagreementRulePageDocument, {
    variables: { rule: id, first: FOUND_AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const { disagreementRules: rules, disagreements, disagreementsMade: percent } = data;
  if (!rules || !disagreements) return <DisagreementsBeingMade percent={percent} onAgain={refetch} />;
  const rule = rules.find((each) => each.id === id);
  if (!rule) return <NotFoundPage what="kind of disagreement" id={id} />;
  const { edges, totalCount } = disagreements;
  return (
    <article>
      <header className={reading["head"]}>
        <Kicker
          steps={[
            { to: "/evidence", name: "evidence" },
            { to: "/evidence/disagreements", name: "disagreements" },
          ]}
        />
        <PageHeading title={rule.title}>{rule.title}</PageHeading>
        <p className={reading["note"]}>{rule.means}</p>
        <p className={reading["note"]}>
          <strong>What to do.</strong> {rule.remedy}
        </p>
      </header>
      <p className={styles["found"]}>
        {totalCount === 0
          ? `Looked for over the ${rule.claimCount} accepted claims of this revision; nothing of the kind was found.`
          : `${totalCount} found.`}
      </p>
      {edges.length > 0 ? <YearsLegend only={signsIn(edges.flatMap(({ node }) => node.claims))} /> : null}
      <div className={styles["findings"]}>
        {edges.map(({ node }) => (
          <FoundDisagreement key={node.id} found={node} />
        ))}
      </div>
      <ShowMore list={disagreements} onMore={(after) => fetchMore({ variables: { after } })} />
    </article>
  );
}
