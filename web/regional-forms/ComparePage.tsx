import { useSuspenseQuery } from "@apollo/client/react";
import { useSearchParams } from "wouter";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { AddRegion } from "./AddRegion.tsx";
import { AloneColumns } from "./AloneColumns.tsx";
import { CompareRegionsDocument } from "./ComparePage.graphql.ts";
import styles from "./ComparePage.module.css";
import { RegionsBeingCounted } from "./RegionsBeingCounted.tsx";
import regional from "./regional.module.css";
import { SharedRows } from "./SharedRows.tsx";
import { splitShared } from "./split-shared.ts";

const MOST = 3;

/** Two or three regions side by side: what they share, on one axis, and what each has alone. They stand in the address. */
export function ComparePage() {
  const [params] = useSearchParams();
  const asked = [...new Set((params.get("of") ?? "").split(",").filter(Boolean))].slice(0, MOST);
  const { data, refetch } = useSuspenseQuery(CompareRegionsDocument, { variables: { of: asked } });
  const { regionProfiles: profiles, regionsMade: percent } = data;
  if (!profiles)
    return <RegionsBeingCounted title="Regions side by side" percent={percent} onAgain={refetch} />;
  const ids = profiles.flatMap(({ region }) => region?.id ?? []);
  const unknown = asked.filter((id) => !ids.includes(id));
  const outlined = profiles.flatMap(({ isOutline, region }) => (isOutline && region ? [region.label] : []));
  const addressOf = (of: readonly string[]) =>
    `/regions/compare${of.length > 0 ? `?of=${of.join(",")}` : ""}`;
  const { shared, alone } = splitShared(profiles);
  return (
    <article className={regional["page"]}>
      <header className={regional["head"]}>
        <nav aria-label="Where it stands" className={regional["kicker"]}>
          <ol>
            <li>
              <TextLink to="/regions">regions</TextLink>
            </li>
            <li>side by side</li>
          </ol>
        </nav>
        <PageHeading title="Regions side by side">Regions side by side</PageHeading>
        {outlined.length > 0 ? (
          <p className={regional["sum"]}>
            More is claimed on {outlined.join(" and ")} than can be laid beside another; choose a region
            within.
          </p>
        ) : null}
        {unknown.length > 0 ? (
          <p className={regional["sum"]}>There is no region with the id {unknown.join(", ")}.</p>
        ) : null}
        <ul className={styles["chosen"]}>
          {profiles.map(({ region, own, within, sources }) =>
            region ? (
              <li key={region.id}>
                <TextLink to={`/regions/${region.id}`} className={styles["name"] ?? ""}>
                  {region.label}
                </TextLink>
                <span className={regional["beside"]}>
                  {within} {within === 1 ? "claim" : "claims"}
                  {within === own ? "" : `, ${own} on the whole of it`}, {sources.length}{" "}
                  {sources.length === 1 ? "source" : "sources"}
                </span>
                <TextLink
                  to={addressOf(ids.filter((id) => id !== region.id))}
                  className={styles["away"] ?? ""}
                >
                  Take {region.label} away
                </TextLink>
              </li>
            ) : null,
          )}
        </ul>
        {ids.length < MOST ? <AddRegion chosen={ids} addressOf={addressOf} /> : null}
      </header>
      {ids.length < 2 ? (
        <p className={regional["empty"]}>
          {ids.length === 0
            ? "Choose two or three regions, and what they share and where they differ is laid out here."
            : "Choose one more region to lay beside it."}
        </p>
      ) : (
        <>
          <SharedRows profiles={profiles} shared={shared} />
          <AloneColumns profiles={profiles} alone={alone} />
        </>
      )}
    </article>
  );
}
