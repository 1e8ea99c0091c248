import { TextLink } from "../shared/ui/TextLink.tsx";
import type { RegionCountsQuery } from "./RegionsPage.graphql.ts";
import styles from "./RegionTree.module.css";

type Counted = NonNullable<RegionCountsQuery["regions"]>[number];

const byLabel = (a: Counted, b: Counted) =>
  (a.region?.label ?? "").localeCompare(b.region?.label ?? "", "en");
const sayCount = ({ own, within }: Counted): string => {
  if (within === 0) return "no claims";
  return within === own ? `${own}` : `${own}, in all ${within}`;
};

/** Regions within regions, each with its claims counted. One whose wider region is not among them stands at the top. */
export function RegionTree({ counts }: { counts: readonly Counted[] }) {
  const ids = new Set(counts.map(({ region }) => region?.id));
  const under = Map.groupBy(counts.toSorted(byLabel), ({ region }) =>
    region?.broader && ids.has(region.broader.id) ? region.broader.id : "",
  );
  return (
    <div className={styles["tree"]}>
      <Branch of="" under={under} />
    </div>
  );
}

const Branch = ({ of, under }: { of: string; under: ReadonlyMap<string, readonly Counted[]> }) => (
  <ul>
    {(under.get(of) ?? []).map((counted) =>
      counted.region ? (
        <li key={counted.region.id}>
          <TextLink to={`/regions/${counted.region.id}`}>{counted.region.label}</TextLink>{" "}
          <span className={styles["count"]}>{sayCount(counted)}</span>
          {under.has(counted.region.id) ? <Branch of={counted.region.id} under={under} /> : null}
        </li>
      ) : null,
    )}
  </ul>
);
