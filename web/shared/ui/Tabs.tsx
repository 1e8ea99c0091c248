import { type KeyboardEvent, type ReactNode, useId, useState } from "react";
import styles from "./Tabs.module.css";

interface Props {
  /** Names the choice for those who do not see it. */
  label: string;
  tabs: readonly { readonly id: string; readonly label: string; readonly content: ReactNode }[];
  /** The one that is open at first; without it the first. */
  startsAt?: number;
}

const MOVES: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at - 1 + count) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/**
 * Several sights of one thing, one at a time on the screen; all of them in print. The arrow keys go from tab to tab.
 * Our own, since a panel of the library searches itself for something to focus at every change, which a large drawing
 * pays for.
 */
export function Tabs({ label, tabs, startsAt = 0 }: Props) {
  const prefix = useId();
  const [chosen, setChosen] = useState(startsAt);
  const current = Math.min(chosen, tabs.length - 1);
  const move = (event: KeyboardEvent<HTMLDivElement>) => {
    const next = MOVES[event.key]?.(current, tabs.length);
    if (next === undefined) return;
    event.preventDefault();
    setChosen(next);
    event.currentTarget.querySelectorAll<HTMLElement>("[role=tab]")[next]?.focus();
  };
  return (
    <div className={styles["tabs"]}>
      <div role="tablist" aria-label={label} className={styles["list"]} onKeyDown={move} tabIndex={-1}>
        {tabs.map((tab, i) => (
          <button
            key={tab.id}
            type="button"
            role="tab"
            id={`${prefix}-tab-${tab.id}`}
            aria-selected={i === current}
            aria-controls={`${prefix}-panel-${tab.id}`}
            tabIndex={i === current ? 0 : -1}
            className={styles["tab"]}
            onClick={() => setChosen(i)}
          >
            {tab.label}
          </button>
        ))}
      </div>
      {tabs.map((tab, i) => (
        <div
          key={tab.id}
          role="tabpanel"
          id={`${prefix}-panel-${tab.id}`}
          aria-labelledby={`${prefix}-tab-${tab.id}`}
          className={styles["panel"]}
          data-current={i === current}
        >
          <p className={styles["printed"]}>{tab.label}</p>
          {tab.content}
        </div>
      ))}
    </div>
  );
}
