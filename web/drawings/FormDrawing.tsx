import { type KeyboardEvent, memo, useCallback, useId, useState } from "react";
import type { PartSummary } from "#server/domain/report.ts";
import { LIST_MOVES } from "#web/shared/navigation/list-moves.ts";
import { DimensionMark } from "./DimensionMark.tsx";
import styles from "./FormDrawing.module.css";
import { HATCHING, Hatching } from "./Hatching.tsx";
import { placeFigures } from "./place-figures.ts";
import type { Shape, View } from "./shape.ts";
import { type DrawnState, STATE_HATCHING } from "./state-hatching.ts";

/** What a shape stands for on this piece. */
export interface Drawn {
  /** Its name and what it says, as one line: "drawers: cannot be of 1765–1775". */
  readonly says: string;
  readonly speaks: PartSummary["speaks"];
  readonly isChosen: boolean;
  /** Hatched by what it most probably is, in place of what speaks against it. */
  readonly state?: DrawnState;
  /** A few letters written on it where there is room: "0.83". `says` says the same. */
  readonly figure?: string;
  /** Outlined with dashes: the story chosen touches it. */
  readonly isTouched?: boolean;
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
  const drawn = view.shapes.map((shape) => ({ shape, as: drawnAs(shape) }));
  const figures = placeFigures(
    drawn.map(({ shape, as }) => ({ outline: shape.outline, figure: as.figure ?? "" })),
  );
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
      {drawn.map(({ shape, as }, i) => (
        <ShapeButton
          key={shape.key}
          shape={shape}
          {...as}
          prefix={prefix}
          isInTabOrder={i === current}
          onChoose={choose}
        />
      ))}
      {view.dimensions.map((dimension) => (
        <DimensionMark key={`${dimension.along} ${dimension.from}`} {...dimension} />
      ))}
      <svg className={styles["figures"]} aria-hidden="true">
        {figures.map(({ x, y, says }) => (
          <text key={`${x} ${y}`} x={x} y={y} textAnchor="middle" className={styles["figure"]}>
            {says}
          </text>
        ))}
      </svg>
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
  state,
  isChosen,
  isTouched = false,
  prefix,
  isInTabOrder,
  onChoose,
}: ShapeProps) {
  const hatching = state === undefined ? HATCHING[speaks] : STATE_HATCHING[state];
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
      {isTouched ? <path d={shape.outline} className={styles["touched"]} /> : null}
    </g>
  );
});
