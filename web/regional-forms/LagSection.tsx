import { TextLink } from "../shared/ui/TextLink.tsx";
import { useSomeOf } from "../shared/ui/use-some-of.tsx";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { axisAround, type YearAxis } from "../shared/years/year-axis.ts";
import type { PlacedClaimFragment } from "./PlacedClaim.graphql.ts";
import type { DatesBesideFragment } from "./RegionPage.graphql.ts";
import regional from "./regional.module.css";
import { isToldLag, sayLag } from "./say-lag.ts";
import { sayBasis, sayBriefly } from "./say-placed.ts";
import styles from "./YearRows.module.css";
import { YearRow, YearRows } from "./YearRows.tsx";

interface Props {
  title: string;
  /** What the dates are those of. */
  what: string;
  dates: readonly DatesBesideFragment[];
  none: string;
}

/** Rows shown before the rest is asked for. */
const AT_FIRST = 12;

/** The middle of what the begin of a claim can be. */
const beginOf = ({ years }: PlacedClaimFragment): number | undefined => {
  const [first, last] = [years?.begin[0] ?? years?.begin[1], years?.begin[1] ?? years?.begin[0]];
  return typeof first === "number" && typeof last === "number" ? (first + last) / 2 : undefined;
};

/** A line with end ticks from the one begin to the other. */
const LagLine = ({ axis, dates }: { axis: YearAxis; dates: DatesBesideFragment }) => {
  const [from, to] = [beginOf(dates.there), beginOf(dates.here)];
  if (from === undefined || to === undefined) return null;
  const [x1, x2] = [`${axis.at(from)}%`, `${axis.at(to)}%`];
  return (
    <svg className={styles["span"]} width="100%" height="10" aria-hidden="true">
      <line x1={x1} x2={x2} y1="5" y2="5" />
      <line x1={x1} x2={x1} y1="1" y2="9" />
      <line x1={x2} x2={x2} y1="1" y2="9" />
    </svg>
  );
};

/** Dates of the region beside those of another on the same things: both drawn, the lag in words and as a line. */
export function LagSection({ title, what, dates, none }: Props) {
  const { shown, rest } = useSomeOf(dates, AT_FIRST, ", the longest lag first");
  const claims = shown.flatMap(({ here, there }) => [here, there]);
  const axis = axisAround(claims.flatMap(({ relation, years }) => yearsDrawn(claimSpans(relation, years))));
  return (
    <section className={regional["section"]}>
      <h2>
        {title} <span>· {dates.length}</span>
      </h2>
      {dates.length === 0 ? (
        <p className={regional["empty"]}>{none}</p>
      ) : (
        <>
          <p className={regional["empty"]}>{what}</p>
          <YearRows axis={axis}>
            {shown.map((each) => (
              <div key={`${each.here.id} ${each.there.id}`} className={styles["thing"]}>
                <h3 className={styles["name"]}>
                  {each.subject ? (
                    <TextLink to={`/terms/${each.subject.id}`}>{each.subject.label}</TextLink>
                  ) : null}{" "}
                  <span className={styles["lag"]}>{sayLag(each.lag)}</span>
                </h3>
                <ul>
                  {[each.there, each.here].map((claim) => (
                    <YearRow
                      key={claim.id}
                      label={
                        <>
                          {claim.region?.label}:{" "}
                          <TextLink to={`/claims/${claim.id}`}>{sayBriefly(claim)}</TextLink>{" "}
                          <span className={styles["beside"]}>{sayBasis(claim)}</span>
                        </>
                      }
                    >
                      <ClaimBar
                        axis={axis}
                        spans={claimSpans(claim.relation, claim.years)}
                        isSoft={claim.hardness === "PRACTICE"}
                      />
                    </YearRow>
                  ))}
                  {isToldLag(each.lag) ? (
                    <li className={styles["row"]} aria-hidden="true">
                      <span />
                      <div className={styles["bar"]}>
                        <LagLine axis={axis} dates={each} />
                      </div>
                    </li>
                  ) : null}
                </ul>
              </div>
            ))}
          </YearRows>
          <YearsLegend only={signsIn(claims)} />
          {rest}
        </>
      )}
    </section>
  );
}
