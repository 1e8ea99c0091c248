import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import type { CompareRegionsQuery } from "./ComparePage.graphql.ts";
import { byFirstYear } from "./group-found.ts";
import regional from "./regional.module.css";
import { sayBasis, sayBriefly } from "./say-placed.ts";
import type { SharedSubject } from "./split-shared.ts";
import styles from "./YearRows.module.css";
import { YearRow, YearRows } from "./YearRows.tsx";

type Profiles = NonNullable<CompareRegionsQuery["regionProfiles"]>;

interface Props {
  profiles: Profiles;
  shared: readonly SharedSubject<Profiles[number]["found"][number]>[];
}

/** Things shown before the rest is asked for. */
const AT_FIRST = 24;

/** What at least two of the regions have, on one axis, a row for each claim with its region. */
export function SharedRows({ profiles, shared }: Props) {
  const [isWhole, setIsWhole] = useState(false);
  const shown = isWhole ? shared : shared.slice(0, AT_FIRST);
  const claims = shown.flatMap(({ at }) => at.flatMap((found) => found?.claims ?? []));
  const axis = axisAround(claims.flatMap(({ relation, years }) => yearsDrawn(claimSpans(relation, years))));
  return (
    <section className={regional["section"]}>
      <h2>
        What they share <span>· {shared.length}</span>
      </h2>
      {shared.length === 0 ? (
        <p className={regional["empty"]}>
          No one thing is claimed of two of them. What a wider region around them has may still hold for each.
        </p>
      ) : (
        <>
          <YearRows axis={axis}>
            {shown.map(({ id, at }) => (
              <div key={id} className={styles["thing"]}>
                <h3 className={styles["name"]}>
                  <TextLink to={`/terms/${id}`}>{at.find(Boolean)?.subject?.label}</TextLink>
                </h3>
                <ul>
                  {at.flatMap((found, i) =>
                    byFirstYear(found?.claims ?? []).map((claim) => (
                      <YearRow
                        key={`${profiles[i]?.region?.id} ${claim.id}`}
                        label={
                          <>
                            {profiles[i]?.region?.label}:{" "}
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
                    )),
                  )}
                </ul>
              </div>
            ))}
          </YearRows>
          <YearsLegend only={signsIn(claims)} />
          {shown.length < shared.length ? (
            <p className={regional["more"]}>
              <Button onPress={() => setIsWhole(true)}>Show all {shared.length}</Button> {shown.length} shown
            </p>
          ) : null}
        </>
      )}
    </section>
  );
}
