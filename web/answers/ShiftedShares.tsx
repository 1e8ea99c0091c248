import { PART_STATES } from "#server/domain/part-state.ts";
import type { StateOdds } from "#server/domain/weighing/odds.ts";
import { StateShares } from "#web/drawings/StateShares.tsx";
import { StateSwatch } from "#web/drawings/StateSwatch.tsx";
import { STATE_WORDS } from "#web/drawings/state-words.ts";
import styles from "./ShiftedShares.module.css";

/** A share as small as this is not to be seen in a bar, and needs no legend. */
const LEAST_SHOWN = 0.005;

interface Side {
  readonly name: string;
  readonly odds: StateOdds;
}

/** What a part may be on two states of the evidence, as two bars one above the other, with what their hatchings mean. */
export const ShiftedShares = ({ sides }: { sides: readonly [Side, Side] }) => (
  <div className={styles["shares"]}>
    {sides.map(({ name, odds }) => (
      <figure key={name}>
        <figcaption>{name}</figcaption>
        <StateShares odds={odds} of={name} />
      </figure>
    ))}
    <ul aria-hidden="true">
      {PART_STATES.filter((state) => sides.some(({ odds }) => odds[state] >= LEAST_SHOWN)).map((state) => (
        <li key={state}>
          <StateSwatch state={state} /> {STATE_WORDS[state]}
        </li>
      ))}
    </ul>
  </div>
);
