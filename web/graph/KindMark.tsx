import type { TermKind } from "#server/domain/term.ts";
import styles from "./KindMark.module.css";
import { kindShapes } from "./kind-shapes.ts";

interface Props {
  kind: TermKind;
  className?: string | undefined;
}

/** The shape that stands for a kind of term in a drawing. The word stands beside it. */
export function KindMark({ kind, className }: Props) {
  const points = kindShapes[kind];
  return (
    <svg
      className={`${styles["mark"]} ${className ?? ""}`}
      viewBox="-8 -8 16 16"
      width="16"
      height="16"
      aria-hidden="true"
    >
      {points ? (
        <polygon points={points.map(([x, y]) => `${x * 6},${y * 6}`).join(" ")} />
      ) : (
        <circle r="5.5" />
      )}
    </svg>
  );
}
