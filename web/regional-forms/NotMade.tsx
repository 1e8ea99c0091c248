import { TextLink } from "../shared/ui/TextLink.tsx";
import { useSomeOf } from "../shared/ui/use-some-of.tsx";
import type { RegionProfile } from "./region-profile.ts";
import styles from "./regional.module.css";
import { sayBasis } from "./say-placed.ts";

type Claims = RegionProfile["notFound"];

const AT_FIRST = 24;

/** What claims keep out of the region: not found in it, or made elsewhere alone. */
export function NotMade({ claims }: { claims: Claims }) {
  const { shown, rest } = useSomeOf(claims, AT_FIRST);
  return (
    <section className={styles["section"]}>
      <h2>
        Not made here <span>· {claims.length}</span>
      </h2>
      {claims.length === 0 ? (
        <p className={styles["empty"]}>
          Nothing is said to be absent here. Silence is no evidence of absence.
        </p>
      ) : (
        <ul className={styles["lines"]}>
          {shown.map((claim) => (
            <li key={claim.id}>
              <TextLink to={`/claims/${claim.id}`}>{claim.says}</TextLink>{" "}
              <span className={styles["beside"]}>{sayBasis(claim)}</span>
            </li>
          ))}
        </ul>
      )}
      {rest}
    </section>
  );
}
