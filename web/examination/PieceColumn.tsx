import { useMemo } from "react";
import type { ObservationId } from "#server/domain/ids.ts";
import type { StripMark } from "#web/strips/strip-row.ts";
import { AddPart } from "./AddPart.tsx";
import { useDesk } from "./desk.ts";
import { LookSafely } from "./LookSafely.tsx";
import { OriginPairs } from "./OriginPairs.tsx";
import { PartList } from "./PartList.tsx";
import styles from "./PieceColumn.module.css";
import { PieceDrawing } from "./PieceDrawing.tsx";
import type { Strips } from "./use-strips.ts";

/** The piece as it is built: its drawing, its parts, and what was seen on each. */
export function PieceColumn({ strips }: { strips: Strips }) {
  const { piece, stored } = useDesk();
  const form = stored.form?.id === piece.attribution.form ? stored.form : null;
  const marks = useMemo(() => {
    const rows = strips.groups.flatMap((group) => group.rows);
    return new Map<ObservationId, StripMark>(
      rows.flatMap((row) => (row.observation === undefined ? [] : [[row.observation, row.mark]])),
    );
  }, [strips]);
  return (
    <section className={styles["column"]} aria-label="The piece">
      <PieceDrawing />
      <PartList marks={marks} />
      <div className={`screen-only ${styles["adding"]}`}>
        <AddPart parts={piece.parts} usual={form?.parts} />
        <OriginPairs parts={piece.parts} together={piece.together} separate={piece.separate} />
      </div>
      <LookSafely />
    </section>
  );
}
