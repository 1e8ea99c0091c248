import { useMemo } from "react";
import { yearsDrawn } from "#web/shared/years/claim-spans.ts";
import { axisAround } from "#web/shared/years/year-axis.ts";
import type { AroundRow, ExtraLink } from "./around-row.ts";
import { PAPER_WIDTH, PlateView } from "./PlateView.tsx";
import { placeAround } from "./place-around.ts";
import { useFrameWidth } from "./use-frame-width.ts";

interface Props {
  rows: readonly AroundRow[];
  extras: readonly ExtraLink[];
  /** The row that is drawn strong. */
  lit: string | undefined;
  onChoose: (row: string | undefined) => void;
}

/** The neighbourhood of a term, drawn. The list beside it says the same. */
export function AroundView({ rows, extras, lit, onChoose }: Props) {
  const [width, frame] = useFrameWidth();
  const claims = useMemo(() => rows.flatMap((row) => (row.type === "term" ? row.claims : [])), [rows]);
  const axis = useMemo(
    () =>
      axisAround(
        claims.flatMap(({ spans }) => yearsDrawn(spans)),
        0,
      ),
    [claims],
  );
  const plate = useMemo(
    () => (width === undefined ? undefined : placeAround(rows, extras, axis, width)),
    [rows, extras, axis, width],
  );
  const paper = useMemo(() => placeAround(rows, extras, axis, PAPER_WIDTH), [rows, extras, axis]);
  const isLit = useMemo(() => (lit === undefined ? undefined : new Set([lit])), [lit]);
  return (
    <PlateView
      plate={plate}
      paper={paper}
      frame={frame}
      axis={axis}
      hasYears={claims.length > 0}
      lit={isLit}
      onTap={onChoose}
      label="The neighbourhood, drawn. The list of neighbours says the same."
    />
  );
}
