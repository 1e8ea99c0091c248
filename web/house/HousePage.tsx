import { useSuspenseQuery } from "@apollo/client/react";
import { LOST, NewsLine } from "../shared/live/NewsLine.tsx";
import { useNews } from "../shared/live/use-news.ts";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { sayDay } from "../shared/words/say-day.ts";
import { sayPerson } from "../shared/words/say-person.ts";
import { HousePageDocument, type HousePageQuery } from "./HousePage.graphql.ts";
import styles from "./house.module.css";
import { HOUSE_PLACES } from "./places.ts";

const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/** What waits for whoever looks, as sentences with where to go. */
function waiting({ toReview, askedFor, drafts, disputes }: HousePageQuery) {
  return [
    {
      count: toReview.totalCount,
      to: "/house/proposals?list=review",
      says: many(toReview.totalCount, "proposal waits for a reviewer", "proposals wait for a reviewer"),
    },
    {
      count: askedFor.totalCount,
      to: "/house/proposals?list=mine",
      says: many(
        askedFor.totalCount,
        "proposal of yours is to be changed",
        "proposals of yours are to be changed",
      ),
    },
    {
      count: drafts.totalCount,
      to: "/house/proposals?list=mine",
      says: many(drafts.totalCount, "draft of yours is not handed in", "drafts of yours are not handed in"),
    },
    {
      count: disputes.totalCount,
      to: "/house/disputes",
      says: many(disputes.totalCount, "claim is disputed", "disputes of claims are open"),
    },
  ].filter(({ count }) => count > 0);
}

/** The house: what waits, who called, and the pages that many share. */
export function HousePage() {
  const { data, client } = useSuspenseQuery(HousePageDocument, { fetchPolicy: "cache-and-network" });
  const { isLost } = useNews({
    read: () => client.query({ query: HousePageDocument, fetchPolicy: "network-only" }),
  });
  const waits = waiting(data);
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <PageHeading title="The house">The house</PageHeading>
        <p className={styles["note"]}>
          All who use this evidence keep it together. Anyone may propose a change with its source; somebody
          else decides; nothing is lost, and every old report keeps its answer.
        </p>
      </header>
      <section aria-labelledby="waits" aria-live="polite">
        <h2 id="waits">What waits</h2>
        {waits.length === 0 ? (
          <p className={styles["empty"]}>Nothing waits: no open proposal, no open dispute.</p>
        ) : (
          <ul className={styles["lines"]}>
            {waits.map(({ to, says }) => (
              <li key={says}>
                <TextLink to={to}>{says}</TextLink>
              </li>
            ))}
          </ul>
        )}
      </section>
      {data.mentions.length > 0 ? (
        <section aria-labelledby="called">
          <h2 id="called">Where you were called</h2>
          <ul className={styles["lines"]}>
            {data.mentions.map(({ id, on, text, at, by }) => (
              <li key={id}>
                <TextLink to={on.startsWith("dispute.") ? `/house/disputes/${on}` : `/house/proposals/${on}`}>
                  {sayPerson(by)}, {sayDay(at)}
                </TextLink>
                <p className={styles["says"]}>{text.length > 160 ? `${text.slice(0, 160)} …` : text}</p>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      <section aria-labelledby="places">
        <h2 id="places">Where to go</h2>
        <ul className={styles["lines"]}>
          {HOUSE_PLACES.map(({ to, name, says }) => (
            <li key={to}>
              <TextLink to={to} className={styles["name"] ?? ""}>
                {name}
              </TextLink>
              <p className={styles["says"]}>{says}</p>
            </li>
          ))}
        </ul>
      </section>
      <NewsLine connection={isLost ? LOST : undefined} told={[]} />
    </article>
  );
}
