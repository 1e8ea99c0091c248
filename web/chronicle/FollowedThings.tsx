import { Link } from "wouter";
import type { EditInWords } from "#server/domain/edit-words.ts";
import { kindOfId } from "#server/domain/kind-of-id.ts";
import { askServer } from "../shared/asking/ask-server.ts";
import { Differences } from "../shared/history/Differences.tsx";
import { Button } from "../shared/ui/Button.tsx";
import styles from "./chronicle.module.css";
import { addressOfDifference } from "./two-revisions.ts";

/** What changed about one thing that is followed. */
export interface FollowedThing {
  readonly about: string;
  readonly name: string;
  readonly since: number;
  readonly count: number;
  readonly edits: readonly (EditInWords & { readonly id: string; readonly kind: string })[];
}

interface Props {
  things: readonly FollowedThing[];
  newest: number;
  onLeft: () => Promise<void>;
}

const DONE = { added: "New", changed: "Changed", withdrawn: "Withdrawn" } as const;

/** All that is followed: what changed first, then what did not. */
export function FollowedThings({ things, newest, onLeft }: Props) {
  const changed = things.filter(({ count }) => count > 0);
  const still = things.filter(({ count }) => count === 0);
  return (
    <section className={styles["section"]} aria-labelledby="followed">
      <h2 id="followed">What you follow</h2>
      {things.length === 0 ? <p className={styles["note"]}>You follow nothing of the evidence yet.</p> : null}
      <ul className={styles["list"]}>
        {[...changed, ...still].map(({ about, name, since, count, edits }) => (
          <li key={about}>
            <h3>
              <Link
                href={about.startsWith("region.") ? `/regions/${about}` : `/${kindOfId(about)}s/${about}`}
              >
                {name}
              </Link>
            </h3>
            <p className={styles["says"]}>
              {count === 0 ? "Nothing changed" : count === 1 ? "1 change" : `${count} changes`} since revision{" "}
              {since}.
            </p>
            <ul className={styles["lines"]}>
              {edits.map(({ id, kind, does, says, differences }) => (
                <li key={id}>
                  <strong>{DONE[does]}</strong>{" "}
                  <Link href={`/${kind}s/${id}${does === "withdrawn" ? `?revision=${since}` : ""}`}>
                    {says}
                  </Link>
                  {differences.length === 0 ? null : <Differences differences={differences} later="became" />}
                </li>
              ))}
            </ul>
            <div className={styles["acts"]}>
              {count > edits.length ? (
                <Link href={addressOfDifference(since, newest)}>All that changed in the evidence</Link>
              ) : null}
              <Button
                look="quiet"
                aria-label={`Do not follow ${name}`}
                onPress={async () => {
                  await askServer("/chronicle/unfollow", { about });
                  await onLeft();
                }}
              >
                Do not follow any more
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
