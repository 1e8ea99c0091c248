import { useState } from "react";
import type { PartId } from "#server/domain/ids.ts";
import type { PlainStateOdds } from "#server/domain/weighing/odds.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Disclosure } from "#web/shared/ui/Disclosure.tsx";
import { RangeField } from "#web/shared/ui/RangeField.tsx";
import { Aged } from "./Aged.tsx";
import styles from "./Assumptions.module.css";
import { chosenOf, withPartOdds } from "./choose-odds.ts";
import { datesOf } from "./likeliest.ts";
import { LEAST, MOST, moveOdds, PLAIN_STATES, type PlainState } from "./linked-odds.ts";
import { sayStates } from "./say-odds.ts";
import { useOdds, useWeighed } from "./weighing-desk.ts";

interface Props {
  /** Parts that share one state. */
  group: readonly PartId[];
  name: string;
  /** What comes out for it now. */
  follows: string;
}

const STATES: Readonly<Record<PlainState, string>> = {
  original: "of the first making",
  later: "later",
  reused: "from an earlier piece",
};

/** What is assumed of one part: three shares that always add up to 1, and what follows for it. */
export function PartOdds({ group, name, follows }: Props) {
  const { weighed, assumedOf } = useWeighed();
  const { odds, tryOdds } = useOdds();
  const [isOpen, setOpen] = useState(false);
  const chosen = chosenOf(odds, group);
  const assumed = group[0] === undefined ? undefined : assumedOf(group[0]);
  const shown = chosen ?? assumed ?? plainOf(datesOf(weighed.weighing.dates, group[0])?.prior);
  // The piece as a whole is of its own making: there is nothing to choose.
  if (shown === undefined || (chosen === undefined && shown.original > MOST)) return null;
  return (
    <li className={styles["part"]}>
      <Disclosure
        level={4}
        isOpen={isOpen}
        onOpenChange={setOpen}
        summary={
          <>
            <b>{name}</b>{" "}
            <span className={styles["quiet"]}>
              {sayStates(shown)}
              {chosen === undefined ? "" : ", chosen"}
            </span>
          </>
        }
      >
        {isOpen ? (
          <div className="screen-only">
            {PLAIN_STATES.map((state) => (
              <RangeField
                key={state}
                label={STATES[state]}
                of={name}
                value={shown[state]}
                {...{ min: LEAST, max: MOST, step: 0.01 }}
                says={shown[state].toFixed(2)}
                assumed={chosen && assumed ? assumed[state].toFixed(2) : undefined}
                onChange={(value) => tryOdds(withPartOdds(odds, group, moveOdds(shown, state, value)))}
              />
            ))}
            <Aged as="p" stage="dates" className={styles["follows"]} aria-live="polite">
              Then: {follows}.
            </Aged>
            {chosen === undefined ? null : (
              <Button look="quiet" onPress={() => tryOdds(withPartOdds(odds, group, undefined))}>
                Reset {name.replace(/^The/, "the")} to assumed
              </Button>
            )}
          </div>
        ) : null}
      </Disclosure>
    </li>
  );
}

const plainOf = (
  prior: (PlainStateOdds & { readonly reworked: number }) | undefined,
): PlainStateOdds | undefined =>
  prior && {
    original: prior.original / (1 - prior.reworked),
    later: prior.later / (1 - prior.reworked),
    reused: prior.reused / (1 - prior.reworked),
  };
