import { useSuspenseQuery } from "@apollo/client/react";
import { FollowButton } from "../shared/chronicle/FollowButton.tsx";
import { NotFoundPage } from "../shared/ui/NotFoundPage.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { useSomeOf } from "../shared/ui/use-some-of.tsx";
import { BlindSpots } from "./BlindSpots.tsx";
import { FoundSection } from "./FoundSection.tsx";
import { LagSection } from "./LagSection.tsx";
import { NotMade } from "./NotMade.tsx";
import { RegionPageDocument } from "./RegionPage.graphql.ts";
import { RegionSources } from "./RegionSources.tsx";
import { RegionsBeingCounted } from "./RegionsBeingCounted.tsx";
import type { RegionProfile } from "./region-profile.ts";
import styles from "./regional.module.css";

const claimsIn = (count: number) => (count === 1 ? "1 claim" : `${count} claims`);

/** One region: what was usual there and what was not, beside its wider region and its capital, and what is not known. */
export function RegionPage({ id }: { id: string }) {
  const { data, refetch } = useSuspenseQuery(RegionPageDocument, { variables: { id } });
  const { regionProfile: profile, regionsMade: percent } = data;
  if (!profile && percent < 100)
    return <RegionsBeingCounted title="Region" percent={percent} onAgain={refetch} />;
  if (!profile?.region) return <NotFoundPage what="region" id={id} />;
  const { region, wider, centre } = profile;
  const besides = [wider, centre].filter((each) => each !== null);
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <nav aria-label="Where it stands" className={styles["kicker"]}>
          <ol>
            <li>
              <TextLink to="/regions">regions</TextLink>
            </li>
            {region.broaderTerms.toReversed().map(({ id, label }) => (
              <li key={id}>
                <TextLink to={`/regions/${id}`}>{label}</TextLink>
              </li>
            ))}
          </ol>
        </nav>
        <PageHeading title={region.label}>{region.label}</PageHeading>
        {region.otherLabels.length > 0 ? (
          <p className={styles["also"]}>also called {region.otherLabels.join(", ")}</p>
        ) : null}
        {region.note ? <p className={styles["note"]}>{region.note}</p> : null}
        <p className={styles["sum"]}>
          {profile.within === 0
            ? "No claim names this region yet, nor one within it."
            : profile.within === profile.own
              ? `Known from ${claimsIn(profile.own)}.`
              : `Known from ${claimsIn(profile.within)}: ${profile.own} on the whole of it, the rest on regions within it.`}{" "}
          <TextLink to={`/terms/${region.id}`}>Every claim on it</TextLink> ·{" "}
          <a href={`/feeds/${region.id}.atom`}>What changes, as a feed</a>
        </p>
        <FollowButton about={region.id} name={region.label} />
        <ul className={styles["choices"]}>
          {besides.map((other) => (
            <li key={other.id}>
              <TextLink to={`/regions/compare?of=${region.id},${other.id}`}>
                Side by side with {other.label}
              </TextLink>
            </li>
          ))}
          <li>
            <TextLink to={`/regions/compare?of=${region.id}`}>Side by side with another</TextLink>
          </li>
        </ul>
      </header>
      {profile.isOutline ? (
        <p className={styles["empty"]}>
          This is more than one page can lay out. Choose one of the regions within it, or look through every
          claim on it.
        </p>
      ) : null}
      {profile.narrower.length > 0 ? <RegionsWithin narrower={profile.narrower} /> : null}
      {profile.isOutline ? null : <LaidOut profile={profile} />}
    </article>
  );
}

/** What was there and what was not, beside other places, with the sources. */
function LaidOut({ profile }: { profile: RegionProfile }) {
  const { region, found, centre } = profile;
  const of = (group: (typeof found)[number]["group"]) => found.filter((each) => each.group === group);
  return (
    <>
      <FoundSection
        title="Practices and features"
        found={of("PRACTICE")}
        region={region?.id ?? ""}
        none="Nothing is said of how work was done here. That is a gap in the evidence, not a finding."
      />
      <FoundSection
        title="Woods"
        found={of("WOOD")}
        region={region?.id ?? ""}
        none="No wood is tied to this region yet."
      />
      <FoundSection
        title="Forms made"
        found={of("FORM")}
        region={region?.id ?? ""}
        none="No form is recorded for this region yet."
      />
      <NotMade claims={profile.notFound} />
      <FoundSection
        title="Shops"
        found={of("SHOP")}
        region={region?.id ?? ""}
        none="No shop of this region is known here."
      />
      {centre ? (
        <LagSection
          title={`Beside ${centre.label}`}
          what={`First and last dates here beside those of ${centre.label}, or of the country around it where the town has none.`}
          dates={profile.besideCentre}
          none={`Nothing is dated both here and in ${centre.label} or the country around it, so no lag can be told.`}
        />
      ) : null}
      {region && region.broaderTerms.length > 0 ? (
        <LagSection
          title="Beside its wider region"
          what="First and last dates here beside those of the nearest region around it that has one."
          dates={profile.besideWider}
          none="Nothing is dated both here and in a wider region, so no lag can be told."
        />
      ) : null}
      <RegionSources sources={profile.sources} unsourced={profile.unsourced} />
      <BlindSpots profile={profile} />
    </>
  );
}

const WITHIN_AT_FIRST = 60;

function RegionsWithin({ narrower }: { narrower: RegionProfile["narrower"] }) {
  const { shown, rest } = useSomeOf(narrower, WITHIN_AT_FIRST);
  return (
    <section className={styles["section"]}>
      <h2>
        Regions within it <span>· {narrower.length}</span>
      </h2>
      <ul className={styles["columns"]}>
        {shown.map(({ region: inner, within }) =>
          inner ? (
            <li key={inner.id}>
              <TextLink to={`/regions/${inner.id}`}>{inner.label}</TextLink>{" "}
              <span className={styles["beside"]}>{within === 0 ? "no claims" : claimsIn(within)}</span>
            </li>
          ) : null,
        )}
      </ul>
      {rest}
    </section>
  );
}
