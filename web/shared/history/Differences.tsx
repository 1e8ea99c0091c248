import styles from "./Differences.module.css";
import { type Marked, markChanged } from "./mark-changed.ts";

interface Props {
  differences: readonly {
    readonly what: string;
    readonly before?: string | null;
    readonly after?: string | null;
  }[];
  /** What the later side is called: it became so, or it is so now. */
  later: "became" | "is now";
}

const Text = ({ text: { same, changed, rest } }: { text: Marked }) => (
  <>
    {same}
    {changed !== "" && (same || rest) ? <strong>{changed}</strong> : changed}
    {rest}
  </>
);

const alone = (text: string): Marked => ({ same: "", changed: text, rest: "" });

/** What differs, thing by thing: what it was, and what it became. */
export const Differences = ({ differences, later }: Props) => (
  <dl className={styles["differences"]}>
    {differences.map(({ what, before, after }) => {
      const [was, is] =
        before && after ? markChanged(before, after) : [alone(before ?? ""), alone(after ?? "")];
      return (
        <div key={`${what} ${before} ${after}`}>
          <dt>{what}</dt>
          {before == null ? null : (
            <dd>
              <span className={styles["side"]}>{after == null ? "dropped" : "was"}</span>
              <span className={styles["was"]}>
                <Text text={was} />
              </span>
            </dd>
          )}
          {after == null ? null : (
            <dd>
              <span className={styles["side"]}>{before == null ? "new" : later}</span>
              <span>
                <Text text={is} />
              </span>
            </dd>
          )}
        </div>
      );
    })}
  </dl>
);
