import { Fragment } from "react";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { stateWords } from "../shared/words/claim-words.ts";
import type { ClaimPageQuery } from "./ClaimPage.graphql.ts";
import styles from "./ClaimPage.module.css";
import reading from "./reading.module.css";

type Claim = NonNullable<ClaimPageQuery["claim"]>;

/** What a claim without a date states: its ways, its objects, the states it speaks for. */
export function ClaimWays({ claim }: { claim: Claim }) {
  if (claim.relation === "REQUIRES")
    return (
      <section className={reading["section"]}>
        <h2>What it can be made with</h2>
        <ul className={reading["list"]}>
          {claim.ways.map(({ terms }, way) => (
            <li key={terms.map((term) => term.id).join()} className={styles["way"]}>
              {way > 0 ? <i>or</i> : null}
              {terms.map((term, i) => (
                <Fragment key={term.id}>
                  {i > 0 ? <i>together with</i> : null}
                  <TextLink to={`/terms/${term.id}`}>{term.label}</TextLink>
                </Fragment>
              ))}
            </li>
          ))}
        </ul>
        <p className={styles["follows"]}>
          {claim.closed
            ? "No other way is known, so it cannot be earlier than the earliest of them."
            : "There may be other ways, so no date follows from these."}
        </p>
      </section>
    );
  if (claim.relation === "INDICATES")
    return (
      <section className={reading["section"]}>
        <h2>What it speaks for</h2>
        <ul className={reading["list"]}>
          {claim.states.map((state, i) => (
            <li key={state}>
              {i > 0 ? "or that " : ""}the part is {stateWords[state]}
            </li>
          ))}
        </ul>
        <p className={styles["follows"]}>
          A sign speaks for or against; by itself it dates nothing and rules nothing out.
        </p>
      </section>
    );
  if (claim.objects.length === 0) return null;
  return (
    <section className={reading["section"]}>
      <h2>{claim.relation === "VOID_WHEN" ? "What has to be seen for it" : "What it names"}</h2>
      <ul className={reading["list"]}>
        {claim.objects.map((term) => (
          <li key={term.id}>
            <TextLink to={`/terms/${term.id}`}>{term.label}</TextLink>
          </li>
        ))}
      </ul>
    </section>
  );
}
