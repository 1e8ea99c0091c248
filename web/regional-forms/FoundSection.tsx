import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ClaimBar } from "../shared/years/ClaimBar.tsx";
import { claimSpans, yearsDrawn } from "../shared/years/claim-spans.ts";
import { signsIn } from "../shared/years/signs-in.ts";
import { YearsLegend } from "../shared/years/YearsLegend.tsx";
import { axisAround } from "../shared/years/year-axis.ts";
import { byFirstYear, splitByDate } from "./group-found.ts";
import type { PlacedClaimFragment } from "./PlacedClaim.graphql.ts";
import type { RegionProfile } from "./region-profile.ts";
import regional from "./regional.module.css";
import { sayBasis, sayBriefly, sayWhere } from "./say-placed.ts";
import styles from "./YearRows.module.css";
import { YearRow, YearRows } from "./YearRows.tsx";

export type Found = RegionProfile["found"][number];

interface Props {
  title: string;
  found: readonly Found[];
  /** The region of the page: not said again in each row. */
  region: string;
  /** What is said where nothing is known. */
  none: string;
}

/** Things shown before the rest is asked for. */
const AT_FIRST = 24;

/** A claim in few words, with where it is so and its basis. */
export const BriefClaim = ({ claim, region }: { claim: PlacedClaimFragment; region: string }) => (
  <>
    <TextLink to={`/claims/${claim.id}`}>{sayBriefly(claim)}</TextLink>{" "}
    <span className={styles["beside"]}>
      {[sayWhere(claim, region), sayBasis(claim)].filter(Boolean).join(" · ")}
    </span>
  </>
);

/** What was there of one group: the dated things on one axis, then those without a date. */
export function FoundSection({ title, found, region, none }: Props) {
  const [isWhole, setIsWhole] = useState(false);
  const { dated, undated } = splitByDate(found);
  const shownDated = isWhole ? dated : dated.slice(0, AT_FIRST);
  const shownUndated = isWhole ? undated : undated.slice(0, AT_FIRST);
  const left = found.length - shownDated.length - shownUndated.length;
  const claims = shownDated.flatMap((thing) => thing.claims);
  const axis = axisAround(claims.flatMap((claim) => yearsDrawn(claimSpans(claim.relation, claim.years))));
  return (
    <section className={regional["section"]}>
      <h2>
        {title} <span>· {found.length}</span>
      </h2>
      {found.length === 0 ? <p className={regional["empty"]}>{none}</p> : null}
      {shownDated.length > 0 ? (
        <>
          <YearRows axis={axis}>
            {shownDated.map(({ subject, claims }) => (
              <div key={subject?.id} className={styles["thing"]}>
                <h3 className={styles["name"]}>
                  {subject ? <TextLink to={`/terms/${subject.id}`}>{subject.label}</TextLink> : null}
                </h3>
                <ul>
                  {byFirstYear(claims).map((claim) => (
                    <YearRow key={claim.id} label={<BriefClaim claim={claim} region={region} />}>
                      <ClaimBar
                        axis={axis}
                        spans={claimSpans(claim.relation, claim.years)}
                        isSoft={claim.hardness === "PRACTICE"}
                      />
                    </YearRow>
                  ))}
                </ul>
              </div>
            ))}
          </YearRows>
          <YearsLegend only={signsIn(claims)} />
        </>
      ) : null}
      {shownUndated.length > 0 ? (
        <>
          {dated.length > 0 ? <h3>Without a date</h3> : null}
          <ul className={regional["columns"]}>
            {shownUndated.map(({ subject, claims }) => (
              <li key={subject?.id}>
                {subject ? <TextLink to={`/terms/${subject.id}`}>{subject.label}</TextLink> : null}
                {claims.map((claim) => (
                  <span key={claim.id}>
                    {" · "}
                    <BriefClaim claim={claim} region={region} />
                  </span>
                ))}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {left > 0 ? (
        <p className={regional["more"]}>
          <Button onPress={() => setIsWhole(true)}>Show all {found.length}</Button> {found.length - left}{" "}
          shown
        </p>
      ) : null}
    </section>
  );
}
