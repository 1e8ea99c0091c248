import { useSuspenseQuery } from "@apollo/client/react";
import { Suspense, useMemo } from "react";
import { useSearchParams } from "wouter";
import { readRows } from "../shared/apollo/read-rows.ts";
import type { DisputeState } from "../shared/apollo/schema-types.graphql.ts";
import { LOST, NewsLine } from "../shared/live/NewsLine.tsx";
import { InTheHouse } from "../shared/ui/InTheHouse.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { RadioGroup } from "../shared/ui/RadioGroup.tsx";
import { ShowMore } from "../shared/ui/ShowMore.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { Waiting } from "../shared/ui/Waiting.tsx";
import { outcomeWords } from "../shared/words/outcome-words.ts";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { DisputesPageDocument } from "./DisputePage.graphql.ts";
import styles from "./proposals.module.css";
import { useListNews } from "./use-list-news.ts";

const AT_ONCE = 20;
const CHOICES = [
  { id: "OPEN", label: "open" },
  { id: "ENDED", label: "ended" },
] as const;

function List({ state }: { state: DisputeState }) {
  const { data, fetchMore, client } = useSuspenseQuery(DisputesPageDocument, {
    variables: { state, first: AT_ONCE },
    fetchPolicy: "cache-and-network",
  });
  const { disputes } = data;
  const seen = useMemo(
    () => ({
      count: disputes.totalCount,
      rows: disputes.edges.map(({ node: { id, claim, claimId, isMine, decision } }) => ({
        ...{ id, name: claim?.says ?? claimId, isMine },
        stands: decision ? "is ended" : "is open again",
      })),
    }),
    [disputes],
  );
  const { told, isLost } = useListNews(seen, (wanted) =>
    readRows(client, DisputesPageDocument, { state }, "disputes", wanted),
  );
  return (
    <>
      {disputes.totalCount === 0 ? (
        <p className={styles["empty"]}>
          {state === "OPEN"
            ? "Nobody disputes a claim. A doubt is brought up on the page of the claim."
            : "No dispute has ended yet."}
        </p>
      ) : null}
      <ul className={styles["lines"]}>
        {disputes.edges.map(({ node: { id, claim, claimId, says, by, at, decision } }) => (
          <li key={id}>
            <TextLink to={`/house/disputes/${id}`} className={styles["name"] ?? ""}>
              {claim?.says ?? claimId}
            </TextLink>
            <p className={styles["said"]}>{says.length > 200 ? `${says.slice(0, 200)} …` : says}</p>
            <p className={styles["beside"]}>
              {sayPerson(by)}, {sayDay(at)}
              {decision ? ` · ended ${sayDay(decision.at)}: ${outcomeWords[decision.outcome]}` : ""}
            </p>
          </li>
        ))}
      </ul>
      <ShowMore
        list={disputes}
        onMore={(after) => fetchMore({ variables: { after } })}
        label="Show more disputes"
      />
      <NewsLine connection={isLost ? LOST : undefined} told={[told]} />
    </>
  );
}

/** Disputes of claims in the house, open or ended. */
export function DisputesPage() {
  const [params, setParams] = useSearchParams();
  const state: DisputeState = params.get("state") === "ended" ? "ENDED" : "OPEN";
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <InTheHouse />
        <PageHeading title="Disputes">Disputes</PageHeading>
        <p className={styles["note"]}>
          Accepted claims that somebody doubts. A dispute lowers nothing by itself, is shown wherever the
          claim is, and ends with a decision that stays.
        </p>
      </header>
      <RadioGroup
        label="Which"
        choices={CHOICES}
        value={state}
        onChange={(id) => setParams(id === "ENDED" ? { state: "ended" } : {}, { replace: true })}
      />
      <section aria-label="The disputes">
        <Suspense fallback={<Waiting what="the disputes" />}>
          <List key={state} state={state} />
        </Suspense>
      </section>
    </article>
  );
}
