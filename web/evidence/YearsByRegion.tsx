import { TextLink } from "../shared/ui/TextLink.tsx";
import { relationWords } from "../shared/words/relation-words.ts";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { sayYearsBriefly } from "../shared/years/say-claim-years.ts";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsGround } from "../shared/years/YearsGround.tsx";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { YearTicks } from "../shared/years/YearTicks.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import { groupByRegion } from "./group-by-region.ts";
import reading from "./reading.module.css";
import type { YearsByRegionFragment } from "./YearsByRegion.graphql.ts";
import styles from "./YearsByRegion.module.css";

interface Props {
  claims: readonly YearsByRegionFragment[];
}

const labelOf = ({ relation, years }: YearsByRegionFragment) =>
  `${relation === "NOT_FOUND_IN" ? "not found" : relationWords[relation]} ${sayYearsBriefly(relation, years)}`;

/** The dated claims about a term on one axis, region by region from the widest to the narrowest. */
export function YearsByRegion({ claims }: Props) {
  const drawn = claims.filter(
    (claim) => claim.status === "ACCEPTED" && claimSpans(claim.relation, claim.years) !== undefined,
  );
  if (drawn.length === 0) return null;
  const axis = axisAround(drawn.flatMap((claim) => yearsDrawn(claimSpans(claim.relation, claim.years))));
  return (
    <section className={reading["section"]}>
      <h2>
        Its years, by region{" "}
        <span>· {drawn.length === 1 ? "1 dated claim" : `${drawn.length} dated claims`}</span>
      </h2>
      <div className={styles["axis"]}>
        <YearTicks axis={axis} />
      </div>
      <div className={styles["rows"]}>
        <div className={styles["ground"]}>
          <YearsGround axis={axis} />
        </div>
        {groupByRegion(drawn).map(({ name, claims: here }) => (
          <div key={name} className={styles["region"]}>
            <h3 className={styles["name"]}>{name}</h3>
            <ul>
              {here.map((claim) => (
                <li key={claim.id} className={styles["row"]}>
                  <p className={styles["label"]}>
                    <TextLink to={`/claims/${claim.id}`} className={styles["link"] ?? ""}>
                      {labelOf(claim)}
                    </TextLink>
                    {claim.form || claim.part ? (
                      <span className={styles["scope"]}>
                        {" "}
                        on {[claim.form?.label, claim.part?.label].filter(Boolean).join(", ")}
                      </span>
                    ) : null}
                  </p>
                  <div className={styles["bar"]}>
                    <ClaimBar
                      axis={axis}
                      spans={claimSpans(claim.relation, claim.years)}
                      isSoft={claim.hardness === "PRACTICE"}
                    />
                  </div>
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
      <YearsLegend only={signsIn(drawn)} />
    </section>
  );
}
