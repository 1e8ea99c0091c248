import type { ClaimLineFragment } from "../shared/claims/ClaimLine.graphql.ts";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { sayClaimYears } from "../shared/years/say-claim-years.ts";
import { YearsGround } from "../shared/years/YearsGround.tsx";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import styles from "./ClaimPage.module.css";
import reading from "./reading.module.css";

/** The years of a dated claim, in words and drawn; nothing for one without a date. */
export function ClaimYears({ claim }: { claim: ClaimLineFragment }) {
  const spans = claimSpans(claim.relation, claim.years);
  if (!spans) return null;
  const axis = axisAround(yearsDrawn(spans), 60);
  return (
    <section className={reading["section"]}>
      <h2>When{claim.when ? <span> · written {claim.when}</span> : null}</h2>
      <p className={styles["when"]}>{sayClaimYears(claim.relation, claim.years)}.</p>
      <div className={styles["drawing"]}>
        <div className={styles["ground"]}>
          <YearsGround axis={axis} />
        </div>
        <ClaimBar axis={axis} spans={spans} isSoft={claim.hardness === "PRACTICE"} height={30} />
        <YearTicks axis={axis} />
      </div>
    </section>
  );
}
