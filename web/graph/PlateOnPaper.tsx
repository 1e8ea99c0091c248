import type { CSSProperties } from "react";
import { TYPE } from "./letters.ts";
import styles from "./PlateOnPaper.module.css";
import type { Plate, PlateLine, PlateMark } from "./plate.ts";

const ANCHOR = { start: "start", middle: "middle", end: "end" } as const;
const LEADING = 1.25;
const tone = (name: string) => ({ "--tone": `var(--${name})` }) as CSSProperties;

/** The same drawing in lines that print sharp at any size; on the screen the canvas stands in its place. */
export const PlateOnPaper = ({ plate }: { plate: Plate }) => (
  <svg
    className={styles["paper"]}
    viewBox={`0 0 ${plate.width} ${plate.height}`}
    width="100%"
    aria-hidden="true"
  >
    {plate.lines.map((line) => (
      <PaperLine key={line.id} line={line} />
    ))}
    {plate.marks.map((mark) => (
      <PaperMark key={mark.id} mark={mark} />
    ))}
  </svg>
);

const PaperLine = ({ line: { points, look } }: { line: PlateLine }) =>
  look === "extra" ? null : (
    <polyline points={points.map((point) => point.join(",")).join(" ")} className={styles[look]} />
  );

function PaperMark({ mark }: { mark: PlateMark }) {
  const { x, y } = mark;
  if (mark.form === "words") return <Words {...mark} fontSize={TYPE[mark.size]} />;
  const { wide, high } = mark;
  if (mark.form === "box")
    return (
      <g>
        <rect
          x={x - wide / 2}
          y={y - high / 2}
          width={wide}
          height={high}
          rx={mark.isRound ? 6 : 0}
          className={styles["open"]}
          style={tone(mark.tone)}
        />
        <Words {...mark} align="middle" fontSize={TYPE.small} />
      </g>
    );
  const look = { className: styles[mark.fill], style: tone(mark.tone) };
  if (!mark.points) return <ellipse cx={x} cy={y} rx={wide / 2} ry={high / 2} {...look} />;
  const points = mark.points.map(([px, py]) => `${x + (px * wide) / 2},${y + (py * high) / 2}`).join(" ");
  return <polygon points={points} {...look} />;
}

interface WordsProps {
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
  readonly align: keyof typeof ANCHOR;
  readonly fontSize: number;
  readonly tone: string;
}

const Words = ({ x, y, lines, align, fontSize, tone: name }: WordsProps) => (
  <text textAnchor={ANCHOR[align]} fontSize={fontSize} className={styles["words"]} style={tone(name)}>
    {lines.map((line, i) => (
      <tspan key={line} x={x} y={y + (i - (lines.length - 1) / 2) * fontSize * LEADING + fontSize * 0.35}>
        {line}
      </tspan>
    ))}
  </text>
);
