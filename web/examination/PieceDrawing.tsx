import { useCallback, useMemo, useState } from "react";
import { id } from "#server/domain/ids.ts";
import { type Drawn, FormDrawing } from "#web/drawings/FormDrawing.tsx";
import { findDrawing, pairShapes, worstOf } from "#web/drawings/part-shapes.ts";
import type { Shape, View } from "#web/drawings/shape.ts";
import { Button } from "#web/shared/ui/Button.tsx";
import { Tabs } from "#web/shared/ui/Tabs.tsx";
import { DrawingLegend } from "#web/weighing/DrawingLegend.tsx";
import { HatchedByChoice } from "#web/weighing/HatchedByChoice.tsx";
import { type HatchedBy, useWeighedShapes } from "#web/weighing/use-weighed-shapes.ts";
import { useDeeds, useDesk } from "./desk.ts";
import { addPart } from "./edit-piece.ts";
import styles from "./PieceDrawing.module.css";
import { useKindsOfPart } from "./use-kinds-of-part.ts";

/** The form of the piece as a line drawing, each part hatched by what speaks against it. Nothing where we have none. */
export function PieceDrawing() {
  const [hatchedBy, setHatchedBy] = useState<HatchedBy>("evidence");
  const { stored, piece } = useDesk();
  const { form } = piece.attribution;
  const broader = stored.form?.id === form ? (stored.form?.broaderTerms.map((term) => term.id) ?? []) : [];
  const seen = piece.observations.filter((each) => each.seen === "present").map((each) => each.feature);
  const drawing = form === undefined ? undefined : findDrawing([form, ...broader], seen);
  if (!drawing)
    return (
      <p className={styles["none"]}>
        {form === undefined
          ? "State the form above, and the piece is drawn here."
          : "There is no drawing of this form yet: its parts are listed below."}
      </p>
    );
  return (
    <figure className={styles["figure"]}>
      <HatchedByChoice value={hatchedBy} onChange={setHatchedBy} />
      <Tabs
        label="Sides of the piece"
        tabs={drawing.views.map((view) => ({
          id: view.key,
          label: view.label,
          content: (
            <PieceView
              view={view}
              label={`${drawing.label}, ${view.label.toLowerCase()}`}
              hatchedBy={hatchedBy}
            />
          ),
        }))}
      />
      <DrawingLegend hatchedBy={hatchedBy} />
    </figure>
  );
}

interface ViewProps {
  view: View;
  label: string;
  hatchedBy: HatchedBy;
}

function PieceView({ view, label, hatchedBy }: ViewProps) {
  const { piece, report, words, chosenPart } = useDesk();
  const { choosePart, edit } = useDeeds();
  const { all: kinds } = useKindsOfPart();
  const weighedAs = useWeighedShapes(hatchedBy);
  const [unrecorded, setUnrecorded] = useState<Shape>();
  const pairs = useMemo(() => pairShapes(view, piece.parts), [view, piece.parts]);

  const drawnAs = useCallback(
    (shape: Shape): Drawn => {
      const parts = pairs.get(shape.key) ?? [];
      if (parts.length === 0)
        return { says: `${shape.label}: not recorded yet`, speaks: "not-looked", isChosen: false };
      const says = parts.map((part) => {
        const name = piece.parts.find((each) => each.id === part)?.label ?? part;
        return `${name}: ${weighedAs.says(part) ?? words?.parts.find((each) => each.part === part)?.says ?? "not looked at"}`;
      });
      const speaks = parts.map(
        (part) => report?.parts.find((each) => each.part === part)?.speaks ?? "not-looked",
      );
      return {
        says: `${shape.label}. ${says.join("; ")}`,
        speaks: worstOf(speaks),
        isChosen: chosenPart !== undefined && parts.includes(chosenPart),
        ...weighedAs.drawn(parts),
      };
    },
    [pairs, piece.parts, report, words, chosenPart, weighedAs],
  );

  const onChoose = useCallback(
    (shape: Shape) => {
      const parts = pairs.get(shape.key) ?? [];
      const at = chosenPart === undefined ? -1 : parts.indexOf(chosenPart);
      const next = parts[(at + 1) % Math.max(1, parts.length)];
      setUnrecorded(next === undefined ? shape : undefined);
      if (next !== undefined) choosePart(next);
    },
    [pairs, chosenPart, choosePart],
  );

  const kind = unrecorded && kinds.find((each) => each.id === unrecorded.kind);
  const isStillMissing = unrecorded && (pairs.get(unrecorded.key) ?? []).length === 0;
  return (
    <>
      <FormDrawing label={label} view={view} drawnAs={drawnAs} onChoose={onChoose} />
      <p className={styles["caption"]} aria-live="polite">
        {unrecorded && isStillMissing ? (
          <>
            {unrecorded.label}: not recorded yet.{" "}
            <Button
              look="quiet"
              onPress={() => edit(addPart(kind?.label ?? unrecorded.label, kind && id<"term">(kind.id)))}
            >
              Record it
            </Button>
          </>
        ) : null}
      </p>
    </>
  );
}
