import { useSuspenseQuery } from "@apollo/client/react";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { RegionsBeingCounted } from "./RegionsBeingCounted.tsx";
import { RegionCountsDocument } from "./RegionsPage.graphql.ts";
import { RegionTree } from "./RegionTree.tsx";
import styles from "./regional.module.css";

/** All regions in their tree, each with how many claims there are on it. */
export function RegionsPage() {
  const { data, refetch } = useSuspenseQuery(RegionCountsDocument);
  const { regions, regionsMade: percent } = data;
  if (!regions) return <RegionsBeingCounted title="Regions" percent={percent} onAgain={refetch} />;
  return (
    <>
      <header className={styles["head"]}>
        <PageHeading title="Regions">Regions</PageHeading>
        <p className={styles["note"]}>
          How furniture was made in one place: what was usual there and what was not, in which woods, by which
          shops, and how far behind its capital. The number beside a region counts the claims that name it,
          and in all those on regions within it.
        </p>
        <p>
          <TextLink to="/regions/compare">Lay two or three side by side</TextLink>
        </p>
      </header>
      {regions.length === 0 ? (
        <p className={styles["empty"]}>No regions yet. They come with the first claims that name them.</p>
      ) : (
        <RegionTree counts={regions} />
      )}
    </>
  );
}
