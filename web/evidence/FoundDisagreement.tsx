import { ClaimLine } from "../shared/claims/ClaimLine.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { YearsGround } from "../shared/years/YearsGround.tsx";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import type { FoundDisagreementFragment } from "./DisagreementRulePage.graphql.ts";
import styles from "./FoundDisagreement.module.css";
import reading from "./reading.module.css";

/** One finding: the sentence, then its claims side by side on one axis, each with what it cites. */
export function FoundDisagreement({ found }: { found: FoundDisagreementFragment }) {
  const { says, term, source, claims, claimCount } = found;
  const rows = claims.map((claim) => ({ claim, spans: claimSpans(claim.relation, claim.years) }));
  const isDrawn = rows.some(({ spans }) => spans !== undefined);
  const axis = axisAround(rows.flatMap(({ spans }) => yearsDrawn(spans)));
  return (
    <section className={reading["section"]}>
      <h2>{says}</h2>
      {source ? (
        <p className={styles["source"]}>
          The source: <TextLink to={`/sources/${source.id}`}>{source.text}</TextLink>
        </p>
      ) : null}
      {isDrawn ? (
        <div className={styles["axis"]}>
          <YearTicks axis={axis} />
        </div>
      ) : null}
      <div className={styles["rows"]}>
        {isDrawn ? (
          <div className={styles["ground"]}>
            <YearsGround axis={axis} />
          </div>
        ) : null}
        <ul>
          {rows.map(({ claim, spans }) => (
            <li key={claim.id} className={isDrawn ? styles["drawn"] : styles["row"]}>
              <div className={styles["words"]}>
                <ClaimLine claim={claim} />
              </div>
              {spans ? (
                <div className={styles["bar"]}>
                  <ClaimBar axis={axis} spans={spans} isSoft={claim.hardness === "PRACTICE"} />
                </div>
              ) : null}
            </li>
          ))}
        </ul>
      </div>
      <p className={reading["more"]}>
        {claimCount > claims.length ? `${claims.length} of ${claimCount} claims shown. ` : ""}
        {term ? <TextLink to={`/terms/${term.id}`}>Everything about {term.label}</TextLink> : null}
      </p>
    </section>
  );
}
