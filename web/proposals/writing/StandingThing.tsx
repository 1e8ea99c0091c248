import { ClaimLine } from "#web/shared/claims/ClaimLine.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import type { ToBeCorrectedQuery } from "./Writing.graphql.ts";
import styles from "./writing.module.css";

type Named = Pick<ToBeCorrectedQuery, "claim" | "term" | "source">;

/** What stands now, as it is told everywhere. */
export const StandingThing = ({ named: { claim, term, source } }: { named: Named }) => (
  <section className={styles["standing"]} aria-label="It stands now">
    <p className={styles["beside"]}>It stands now:</p>
    {claim ? <ClaimLine claim={claim} /> : null}
    {term ? (
      <p>
        <TextLink to={`/terms/${term.id}`} className={styles["says"] ?? ""}>
          {term.label}
        </TextLink>{" "}
        {term.note ? <span className={styles["beside"]}>{term.note}</span> : null}
      </p>
    ) : null}
    {source ? (
      <p>
        <TextLink to={`/sources/${source.id}`} className={styles["says"] ?? ""}>
          {source.text}
        </TextLink>
      </p>
    ) : null}
  </section>
);
