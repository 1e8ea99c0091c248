import { TextLink } from "../shared/ui/TextLink.tsx";
import { useSomeOf } from "../shared/ui/use-some-of.tsx";
import type { RegionProfile } from "./region-profile.ts";
import styles from "./regional.module.css";

interface Props {
  sources: RegionProfile["sources"];
  unsourced: number;
}

const AT_FIRST = 12;

/** Where the claims on a region come from, the source of most claims first. */
export function RegionSources({ sources, unsourced }: Props) {
  const { shown, rest } = useSomeOf(sources, AT_FIRST);
  return (
    <section className={styles["section"]}>
      <h2>
        Sources it is known from <span>· {sources.length}</span>
      </h2>
      {sources.length === 0 ? (
        <p className={styles["empty"]}>No published source is cited for this region.</p>
      ) : (
        <ul className={styles["lines"]}>
          {shown.map(({ source, claims }) =>
            source ? (
              <li key={source.id}>
                <TextLink to={`/sources/${source.id}`}>{source.text}</TextLink>{" "}
                <span className={styles["beside"]}>{claims === 1 ? "1 claim" : `${claims} claims`}</span>
              </li>
            ) : null,
          )}
        </ul>
      )}
      {rest}
      {unsourced > 0 ? (
        <p className={styles["sum"]}>
          {unsourced === 1 ? "1 claim rests" : `${unsourced} claims rest`} on common practice or memory alone.
        </p>
      ) : null}
    </section>
  );
}
