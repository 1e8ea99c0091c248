import { useSuspenseQuery } from "@apollo/client/react";
import { useState } from "react";
import { LOST, NewsLine } from "../shared/live/NewsLine.tsx";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { Discussion } from "./Discussion.tsx";
import { ImpactOfProposal } from "./ImpactOfProposal.tsx";
import { OwnSteps } from "./OwnSteps.tsx";
import { type ProposalFieldsFragment, ProposalPageDocument } from "./ProposalPage.graphql.ts";
import { kindWords, stateWords, verdictWords } from "./proposal-words.ts";
import styles from "./proposals.module.css";
import { SidesOfEdit } from "./SidesOfEdit.tsx";
import { useProposalNews } from "./use-proposal-news.ts";
import { VerdictForm } from "./VerdictForm.tsx";

const UNDECIDED: readonly string[] = ["DRAFT", "OPEN", "CHANGES_ASKED_FOR"];

/** One proposal: what it says, what is beside what would be, what accepting it does, what was said of it, and who decides. */
export function ProposalPage({ id }: { id: string }) {
  const { data } = useSuspenseQuery(ProposalPageDocument, {
    variables: { id },
    fetchPolicy: "cache-and-network",
  });
  if (!data.proposal) return <NotFoundPage />;
  return <Proposal proposal={data.proposal} />;
}

function Proposal({ proposal }: { proposal: ProposalFieldsFragment }) {
  const isUndecided = UNDECIDED.includes(proposal.state);
  const { talk, told, fresh, isLost, revision } = useProposalNews(proposal);
  const [hasBeenOpen, setHasBeenOpen] = useState(false);
  if (isUndecided && proposal.state !== "DRAFT" && !hasBeenOpen) setHasBeenOpen(true);
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <p>
          <TextLink to="/house">The house</TextLink> › <TextLink to="/house/proposals">proposals</TextLink> ›{" "}
          {kindWords[proposal.kind]}
        </p>
        <PageHeading title={proposal.title || "Proposal"}>{proposal.title || "(no title yet)"}</PageHeading>
        <p className={styles["beside"]}>
          {proposal.isMine ? "By you" : `By ${sayPerson(proposal.by)}`}, {sayDay(proposal.madeAt)}, on{" "}
          <TextLink to="/house/history">revision {proposal.base}</TextLink>. It is{" "}
          <strong>{stateWords[proposal.state]}</strong>.
          {proposal.origin ? ` It came from ${proposal.origin}.` : ""}
        </p>
        <p className={styles["note"]}>{proposal.why || "Why is not said yet."}</p>
      </header>
      <Ended proposal={proposal} />
      {proposal.unfit ? (
        <p className={styles["refusal"]}>
          The evidence would not take it as it stands: {proposal.unfit.message}
        </p>
      ) : null}
      {proposal.editCount > 0 ? (
        <section aria-labelledby="sides">
          <h2 id="sides">{isUndecided ? "As it is, and as it would be" : "What it asked for"}</h2>
          {proposal.edits.map((edit) => (
            <SidesOfEdit key={edit.of} edit={edit} isOver={!isUndecided} />
          ))}
          {proposal.editCount > proposal.edits.length ? (
            <p className={styles["empty"]}>And {proposal.editCount - proposal.edits.length} more edits.</p>
          ) : null}
        </section>
      ) : null}
      {isUndecided && !proposal.unfit ? (
        <ImpactOfProposal key={`${proposal.version} ${revision}`} id={proposal.id} />
      ) : null}
      <Reviews proposal={proposal} />
      {isUndecided && proposal.isMine ? <OwnSteps proposal={proposal} /> : null}
      {hasBeenOpen ? (
        <VerdictForm proposal={proposal} isOver={!isUndecided} onSaid={() => void talk.readAgain()} />
      ) : null}
      <Discussion on={proposal.id} isSeenByAll={proposal.state !== "DRAFT"} talk={talk} fresh={fresh} />
      <NewsLine connection={isLost ? LOST : undefined} told={[told]} />
    </article>
  );
}

/** What came of it. */
const Ended = ({ proposal: { revision, supersededBy } }: { proposal: ProposalFieldsFragment }) => (
  <>
    {revision === null ? null : (
      <p className={styles["told"]}>
        Accepting it made <TextLink to="/house/history">revision {revision}</TextLink>. Reports of earlier
        revisions keep their answers.
      </p>
    )}
    {supersededBy ? (
      <p className={styles["told"]}>
        In its place: <TextLink to={`/house/proposals/${supersededBy.id}`}>{supersededBy.title}</TextLink>.
      </p>
    ) : null}
  </>
);

/** What reviewers said, oldest first; of an earlier version it says so. */
const Reviews = ({ proposal: { reviews, version, state } }: { proposal: ProposalFieldsFragment }) =>
  reviews.length === 0 ? null : (
    <section aria-labelledby="reviews">
      <h2 id="reviews">What reviewers said</h2>
      <ul className={styles["lines"]}>
        {reviews.map((review) => (
          <li key={review.at}>
            <p>
              <strong>{sayPerson(review.by)}</strong> {verdictWords[review.verdict]}
              <span className={styles["beside"]}>
                {" "}
                · {sayDay(review.at)}
                {state === "OPEN" && review.version < version ? " · of an earlier version" : ""}
              </span>
            </p>
            {review.reason ? <p className={styles["said"]}>{review.reason}</p> : null}
          </li>
        ))}
      </ul>
    </section>
  );
