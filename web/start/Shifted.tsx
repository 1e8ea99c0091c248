import styles from "./PieceRow.module.css";
import type { PieceStripsQuery } from "./PieceStrips.graphql.ts";

type Changed = NonNullable<NonNullable<PieceStripsQuery["examination"]>["standing"]["changedSince"]>;

/** In a list: the first thing that is said otherwise than before, and how many more there are. */
export function Shifted({ changed: { since, lines } }: { changed: Changed }) {
  const [first] = lines;
  if (first === undefined) return null;
  const more = lines.length - 1;
  return (
    <p className={styles["shifted"]}>
      Changed since revision {since}: {first.says}, <b>now {first.now}</b>, before {first.before}
      {more === 0 ? "" : more === 1 ? "; and one thing more" : `; and ${more} things more`}.
    </p>
  );
}
