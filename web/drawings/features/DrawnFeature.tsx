import { memo, useId } from "react";
import { ALL_DRAWINGS, type DrawingKey } from "./all-drawings.ts";
import styles from "./DrawnFeature.module.css";
import { DrawnMark } from "./DrawnMark.tsx";
import { SIDE } from "./mark.ts";

/** Below this many CSS pixels a drawing has no words and less detail. */
const SMALL_BELOW = 96;
/** Below this many there is no room for words of 11 px and a scale bar. */
const WORDS_FROM = 150;

interface Props {
  drawing: DrawingKey;
  /** Side of the square in CSS pixels. */
  size: number;
}

/** A drawing by its key, as one picture whose name says what tells. */
export const DrawnFeature = memo(function DrawnFeature({ drawing, size }: Props) {
  const prefix = useId();
  const { title, tells, draw } = ALL_DRAWINGS[drawing];
  const isSmall = size < SMALL_BELOW;
  const px = SIDE / size;
  const marks = draw(isSmall ? "small" : "full");
  return (
    <svg
      className={styles[isSmall ? "small" : "drawing"]}
      viewBox={`0 0 ${SIDE} ${SIDE}`}
      width={size}
      height={size}
      role="img"
      aria-label={`${title}. ${tells}`}
      data-drawing={drawing}
    >
      <title>{title}</title>
      {marks.map((mark, i) => (
        <DrawnMark
          // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a drawing never change their order.
          key={i}
          mark={mark}
          id={`${prefix}-${i}`}
          px={px}
          isSmall={isSmall}
          hasWords={size >= WORDS_FROM}
        />
      ))}
    </svg>
  );
});
