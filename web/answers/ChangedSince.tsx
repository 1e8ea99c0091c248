import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import type { ChangedSinceFieldsFragment } from "./ChangedSince.graphql.ts";
import styles from "./ChangedSince.module.css";
import { ShiftedShares } from "./ShiftedShares.tsx";
import { sayChangedClaims } from "./say-changed.ts";

/** What changed under a piece since it was recorded or looked at: what is said otherwise, then the claims. */
export function ChangedSince({ changed }: { changed: ChangedSinceFieldsFragment }) {
  const { since, claimCount, claims, gone, lines } = changed;
  return (
    <section className={styles["changed"]} aria-label="Changed since">
      <p>
        {sayChangedClaims(claimCount)} since <TextLink to="/house/history">revision {since}</TextLink>.
        {lines.length === 0 ? " Nothing it says is otherwise." : " Said otherwise now:"}
      </p>
      {lines.length > 0 ? (
        <ul className={styles["lines"]}>
          {lines.map(({ kind, strip, says, before, now, odds }) => (
            <li key={`${kind} ${strip} ${says}`}>
              {says}: <b>now {now}</b>, <span className={styles["before"]}>before {before}</span>
              {odds ? (
                <ShiftedShares
                  sides={[
                    { name: "Now", odds: odds.now },
                    { name: "Before", odds: odds.before },
                  ]}
                />
              ) : null}
            </li>
          ))}
        </ul>
      ) : null}
      {claimCount > 0 ? (
        <Disclosure summary={claimCount === 1 ? "The claim" : "The claims"} level={2}>
          <ul className={styles["claims"]}>
            {claims.map(({ id, says }) => (
              <li key={id}>
                <TextLink to={`/claims/${id}`}>{says}</TextLink>
              </li>
            ))}
            {gone.map(({ id, says }) => (
              <li key={id}>
                No longer: <TextLink to={`/claims/${id}?revision=${since}`}>{says}</TextLink>
              </li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </section>
  );
}
