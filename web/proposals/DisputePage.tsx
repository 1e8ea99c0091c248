import { useSuspenseQuery } from "@apollo/client/react";
import { LOST, NewsLine } from "../shared/live/NewsLine.tsx";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { outcomeWords } from "../shared/words/outcome-words.ts";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { Discussion } from "./Discussion.tsx";
import { type DisputeFieldsFragment, DisputePageDocument } from "./DisputePage.graphql.ts";
import { EndDispute } from "./EndDispute.tsx";
import styles from "./proposals.module.css";
import { useDisputeNews } from "./use-dispute-news.ts";

/** One dispute: the claim, what is wrong with it, the talk, and how it ended or can end. */
export function DisputePage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(DisputePageDocument, {
    variables: { id },
    fetchPolicy: "cache-and-network",
  });
  if (!data.dispute) return <NotFoundPage what="dispute" />;
  return <Dispute dispute={data.dispute} />;
}

function Dispute({ dispute }: { dispute: DisputeFieldsFragment }) {
  const { talk, told, fresh, isLost } = useDisputeNews(dispute);
  const { id, claim, claimId, says, by, isMine, at, decision } = dispute;
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <p>
          <TextLink to="/house">The house</TextLink> › <TextLink to="/house/disputes">disputes</TextLink>
        </p>
        <PageHeading title="A disputed claim">Disputed: {claim?.says ?? claimId}</PageHeading>
        <p className={styles["beside"]}>
          {isMine ? "Brought up by you" : `Brought up by ${sayPerson(by)}`}, {sayDay(at)}.{" "}
          <TextLink to={`/claims/${claimId}`}>The claim</TextLink>{" "}
          {decision ? "" : "counts as before until this ends."}
        </p>
        <p className={styles["note"]}>{says}</p>
      </header>
      {decision ? (
        <div className={styles["told"]}>
          <p>
            It ended {sayDay(decision.at)}: <strong>{outcomeWords[decision.outcome]}</strong>, by{" "}
            {sayPerson(decision.by)}.
          </p>
          {decision.says ? <p className={styles["said"]}>{decision.says}</p> : null}
        </div>
      ) : null}
      <EndDispute dispute={dispute} onSaid={() => void talk.readAgain()} />
      <Discussion on={id} isSeenByAll talk={talk} fresh={fresh} />
      <NewsLine connection={isLost ? LOST : undefined} told={[told]} />
    </article>
  );
}
