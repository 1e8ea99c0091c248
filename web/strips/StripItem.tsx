import { memo } from "react";
import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import styles from "./DatingStrips.module.css";
import { Ground } from "./Ground.tsx";
import type { Glossary } from "./glossary.ts";
import { RowMark } from "./RowMark.tsx";
import { StripDetail } from "./StripDetail.tsx";
import { StripLine } from "./StripLine.tsx";
import type { StripRow } from "./strip-row.ts";

export interface StripDeeds {
  readonly onToggle: (id: string) => void;
  /** Draws the ways of a finding as a graph. */
  readonly onShowWays?: ((id: string) => void) | undefined;
  /** Leads to where the observation is recorded. */
  readonly onEdit?: ((row: StripRow) => void) | undefined;
}

interface Props {
  row: StripRow;
  axis: YearAxis;
  claimed: readonly [Year | null, Year | null];
  glossary: Glossary;
  /** What the story chosen makes of it. */
  touch?: string | undefined;
  isOpen: boolean;
  isInTabOrder: boolean;
  deeds: StripDeeds;
}

/** The words at the end of a strip: the distance; for a sign, what it speaks for; else the reason of the silence. */
function endWords(row: StripRow): string {
  const sign = row.signs[0];
  if (sign && row.isSilent) return sign.isSetAside ? `${sign.brief}; set aside` : sign.brief;
  return row.isSilent ? row.short.replace(/^says nothing: /, "") : row.short;
}

/** One observation as a line: mark, name, years, words. A press unfolds its chain below it. */
export const StripItem = memo(function StripItem({
  row,
  axis,
  claimed,
  glossary,
  touch,
  isOpen,
  isInTabOrder,
  deeds,
}: Props) {
  const isSignOnly = row.isSilent && row.signs.length > 0;
  const atEnd = endWords(row);
  // What is to be seen comes first, so that the name can be spoken as it is read.
  const says = [`${row.label}: ${atEnd}.`, row.says, ...row.signs.map((sign) => sign.says)].join(" ");
  const inStory = touch === undefined ? "" : ` In the story chosen: ${touch}.`;
  return (
    <li
      className={styles["item"]}
      data-mark={row.mark}
      data-touched={touch !== undefined}
      title={inStory.trim() || undefined}
    >
      <button
        type="button"
        className={styles["row"]}
        data-strip={row.id}
        data-silent={row.isSilent}
        data-sign={isSignOnly}
        tabIndex={isInTabOrder ? 0 : -1}
        aria-expanded={isOpen}
        aria-label={says + inStory}
        onClick={() => deeds.onToggle(row.id)}
      >
        <span className={styles["name"]}>
          <RowMark mark={row.mark} />
          <span>{row.label}</span>
        </span>{" "}
        <span className={styles["plot"]}>
          <Ground axis={axis} claimed={claimed} />
          {isSignOnly ? null : <StripLine row={row} axis={axis} />}
        </span>
        <span className={styles["words"]}>{atEnd}</span>
      </button>
      {isOpen ? (
        <StripDetail
          row={row}
          axis={axis}
          claimed={claimed}
          glossary={glossary}
          onShowWays={deeds.onShowWays}
          onEdit={deeds.onEdit}
        />
      ) : null}
    </li>
  );
});
