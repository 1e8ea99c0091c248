import styles from "./years.module.css";

interface Props {
  /** Place on the axis, percent. */
  at: number;
  /** px from the top. */
  y: number;
  /** Path around its own origin, in px: a mark keeps its size on any axis. */
  d: string;
  className?: string | undefined;
}

/** A cross, diamond or arrow at a year. */
export const Mark = ({ at, y, d, className }: Props) => (
  <svg x={`${at}%`} y={y} className={styles["over"]} aria-hidden="true">
    <path d={d} className={className} />
  </svg>
);
