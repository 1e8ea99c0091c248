import { type KeyboardEvent, memo, useCallback, useId, useState } from "react";
import type { PartSummary } from "#server/domain/report.ts";
import { LIST_MOVES } from "#web/shared/navigation/list-moves.ts";
import { DimensionMark } from "./DimensionMark.tsx";
import styles from "./FormDrawing.module.css";
import { HATCHING, Hatching } from "./Hatching.tsx";
import type { Shape, View } from "./shape.ts";

/** What a shape stands for on this piece. */
export interface Drawn {
  /** Its name and what it says, as one line: "drawers: cannot be of 1765–1775". */
  readonly says: string;
  readonly speaks: PartSummary["speaks"];
  readonly isChosen: boolean;
}

interface Props {
  /** Names the whole drawing for those who do not see it. */
  label: string;
  view: View;
  drawnAs: (shape: Shape) => Drawn;
  onChoose: (shape: Shape) => void;
}

const STEPS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ...LIST_MOVES,
  ArrowRight: (at, last) => Math.min(at + 1, last),
  ArrowLeft: (at) => Math.max(at - 1, 0),
};

/**
 * One view of a form as a line drawing whose shapes are buttons. One of them is in the tab order; the arrow keys go
 * through the others in reading order.
 */
export const FormDrawing = memo(function FormDrawing({ label, view, drawnAs, onChoose }: Props) {
  const prefix = useId();
  const [current, setCurrent] = useState(0);
  const choose = useCallback(
    (shape: Shape) => {
      setCurrent(view.shapes.indexOf(shape));
      onChoose(shape);
    },
    [view, onChoose],
  );
  const move = (event: KeyboardEvent<SVGSVGElement>) => {
    const next = STEPS[event.key]?.(current, view.shapes.length - 1);
    if (next === undefined) return;
    event.preventDefault();
    setCurrent(next);
    event.currentTarget.querySelectorAll<SVGGElement>("[role=button]")[next]?.focus();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot hold a drawing.
    <svg
      className={styles["drawing"]}
      viewBox={`0 0 ${view.width} ${view.height}`}
      role="group"
      aria-label={label}
      onKeyDown={move}
    >
      <Hatching prefix={prefix} />
      {view.ground ? <path d={view.ground} className={styles["ground"]} /> : null}
      {view.shapes.map((shape, i) => (
        <ShapeButton
          key={shape.key}
          shape={shape}
          {...drawnAs(shape)}
          prefix={prefix}
          isInTabOrder={i === current}
          onChoose={choose}
        />
      ))}
      {view.dimensions.map((dimension) => (
        <DimensionMark key={`${dimension.along} ${dimension.from}`} {...dimension} />
      ))}
      {view.captions?.map(({ x, y, says }) => (
        <text key={says} x={x} y={y} className={styles["says"]}>
          {says}
        </text>
      ))}
    </svg>
  );
});

interface ShapeProps extends Drawn {
  shape: Shape;
  prefix: string;
  isInTabOrder: boolean;
  onChoose: (shape: Shape) => void;
}

const ShapeButton = memo(function ShapeButton({
  shape,
  says,
  speaks,
  isChosen,
  prefix,
  isInTabOrder,
  onChoose,
}: ShapeProps) {
  const hatching = HATCHING[speaks];
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand inside a drawing.
    <g
      className={styles["shape"]}
      role="button"
      tabIndex={isInTabOrder ? 0 : -1}
      aria-label={says}
      aria-pressed={isChosen}
      onClick={() => onChoose(shape)}
      onKeyDown={(event) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        onChoose(shape);
      }}
    >
      <title>{says}</title>
      <path d={shape.outline} fillRule="evenodd" className={styles["body"]} />
      {hatching ? (
        <path
          d={shape.outline}
          fillRule="evenodd"
          className={styles["hatch"]}
          style={{ fill: `url(#${prefix}-${hatching})` }}
          data-hatching={hatching}
        />
      ) : null}
      <path d={shape.outline} className={styles[shape.weight]} />
      {shape.detail ? <path d={shape.detail} className={styles["detail"]} /> : null}
    </g>
  );
});
