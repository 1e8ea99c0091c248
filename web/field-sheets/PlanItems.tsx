import type { Position } from "../shared/apollo/schema-types.graphql.ts";
import { PlanEntry } from "./PlanEntry.tsx";
import type { PlanItemFragment } from "./PlanPage.graphql.ts";
import { positionWords } from "./position-words.ts";
import styles from "./Sheet.module.css";
import rows from "./SheetRows.module.css";
import type { PieceDesk } from "./use-piece-on-plan.ts";

const ROUND: readonly Position[] = ["FRONT", "DRAWERS_OUT", "BACK", "UNDERNEATH"];

interface Props {
  items: readonly PlanItemFragment[];
  /** The piece that it is filled in for, if there is one. */
  desk?: PieceDesk;
}

/** The items of a plan under the positions from which one looks. */
export const PlanItems = ({ items, desk }: Props) =>
  ROUND.map((position) => {
    const here = items.filter((item) => item.position === position);
    if (here.length === 0) return null;
    const { title, how } = positionWords[position];
    return (
      <section key={position} className={styles["position"]}>
        <header>
          <h2>{title}</h2>
          <p className={styles["come"]}>{how}</p>
        </header>
        <ul className={`${styles["parts"]} ${rows["entries"]}`}>
          {here.map((item) => (
            <PlanEntry key={`${item.part?.id} ${item.feature?.id}`} item={item} desk={desk} />
          ))}
        </ul>
      </section>
    );
  });
