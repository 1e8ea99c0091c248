import { type KeyboardEvent, memo, useCallback, useMemo, useRef, useState } from "react";
import type { PartId } from "#server/domain/ids.ts";
import type { Year } from "#server/domain/years.ts";
import { LIST_MOVES } from "#web/shared/navigation/list-moves.ts";
import { useKeptState } from "#web/shared/navigation/use-kept-state.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./DatingStrips.module.css";
import type { Glossary } from "./glossary.ts";
import { Legend } from "./Legend.tsx";
import { StripItem } from "./StripItem.tsx";
import { StripsHead } from "./StripsHead.tsx";
import type { StripGroup, StripRow } from "./strip-row.ts";
import { useAskedStrip } from "./use-asked-strip.ts";

interface Props {
  groups: readonly StripGroup[];
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
  glossary: Glossary;
  chosenPart?: PartId | undefined;
  onShowWays?: (id: string) => void;
  onEdit?: (row: StripRow) => void;
  /** Rows that the story chosen touches, by id, each with what it makes of them. */
  touched?: ReadonlyMap<string, string>;
  /** Rows that are unfolded from the start. */
  openAtFirst?: readonly string[];
  /** False where what the marks mean stands elsewhere on the page. */
  hasLegend?: boolean;
  /** The strips of the page: its address can name one, and what is unfolded stays so for who comes back. */
  isPage?: boolean;
}

/**
 * The dating strips: one line an observation, grouped by part, on one axis of years. A list of buttons for those who do
 * not see it; the arrow keys go from row to row, Enter unfolds one.
 */
export const DatingStrips = memo(function DatingStrips({
  groups,
  axis,
  claimed,
  glossary,
  chosenPart,
  onShowWays,
  onEdit,
  touched,
  openAtFirst = [],
  hasLegend = true,
  isPage = false,
}: Props) {
  const table = useRef<HTMLDivElement>(null);
  const asked = useAskedStrip(table, isPage);
  const [open, setOpen] = useKeptState<readonly string[]>(
    isPage ? "strips" : undefined,
    asked === undefined ? openAtFirst : [asked],
  );
  const [current, setCurrent] = useState(asked);
  const ids = groups.flatMap((group) => group.rows.map((row) => row.id));
  const inTabOrder = current !== undefined && ids.includes(current) ? current : ids[0];

  const onToggle = useCallback(
    (id: string) => {
      setCurrent(id);
      setOpen((before) => (before.includes(id) ? before.filter((each) => each !== id) : [...before, id]));
    },
    [setOpen],
  );
  const deeds = useMemo(() => ({ onToggle, onShowWays, onEdit }), [onToggle, onShowWays, onEdit]);

  const move = (event: KeyboardEvent<HTMLDivElement>) => {
    const from = (event.target as HTMLElement).dataset["strip"];
    const to = from === undefined ? undefined : LIST_MOVES[event.key]?.(ids.indexOf(from), ids.length - 1);
    const id = to === undefined ? undefined : ids[to];
    if (id === undefined) return;
    event.preventDefault();
    setCurrent(id);
    const rows = event.currentTarget.querySelectorAll<HTMLElement>("[data-strip]");
    for (const row of rows) if (row.dataset["strip"] === id) row.focus();
  };

  return (
    <div className={styles["strips"]}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys move the focus among the buttons inside. */}
      <div ref={table} className={styles["table"]} onKeyDown={move}>
        <StripsHead axis={axis} claimed={claimed} />
        {groups.map((group) => (
          <section
            key={group.id}
            className={styles["group"]}
            data-chosen={chosenPart !== undefined && group.part === chosenPart}
            aria-label={group.label}
          >
            <h3 className={styles["part"]}>{group.label}</h3>
            <ul>
              {group.rows.map((row) => (
                <StripItem
                  key={row.id}
                  row={row}
                  axis={axis}
                  claimed={claimed}
                  glossary={glossary}
                  touch={touched?.get(row.id)}
                  isOpen={open.includes(row.id)}
                  isInTabOrder={row.id === inTabOrder}
                  deeds={deeds}
                />
              ))}
            </ul>
          </section>
        ))}
      </div>
      {hasLegend ? <Legend hasTouched={touched !== undefined && touched.size > 0} /> : null}
    </div>
  );
});
