import { n, type Point } from "../pen.ts";
import styles from "./DrawnFeature.module.css";
import type { Mark } from "./mark.ts";
import { ToneOf } from "./ToneOf.tsx";

/** Size of a word, in CSS pixels: that of axis labels. */
const WORD = 11;
/** Length of the toes of a crow's foot, in CSS pixels: in a small drawing they would cover what they point at. */
const TOE = { full: 6.5, small: 5 } as const;
/** Where the scale bar stands. */
const SCALE: Point = [10, 230];

const unit = ([x0, y0]: Point, [x1, y1]: Point): Point => {
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  return [(x1 - x0) / length, (y1 - y0) / length];
};

const straight = (from: Point, to: Point): string => `M${n(from[0])} ${n(from[1])}L${n(to[0])} ${n(to[1])}`;

/** A line with a crow's foot at its end: what it points at tells. */
function crowsFoot(from: Point, to: Point, arm: number): string {
  const [ux, uy] = unit(from, to);
  const toe = (side: -1 | 1) =>
    straight(to, [
      to[0] - arm * (0.88 * ux + side * 0.47 * uy),
      to[1] - arm * (0.88 * uy - side * 0.47 * ux),
    ]);
  return straight(from, to) + toe(-1) + toe(1);
}

/** A line between two ticks. */
function ticked(from: Point, to: Point, tick: number): string {
  const [ux, uy] = unit(from, to);
  const across = ([x, y]: Point) => straight([x - tick * uy, y + tick * ux], [x + tick * uy, y - tick * ux]);
  return straight(from, to) + across(from) + across(to);
}

interface Props {
  mark: Mark;
  /** Of this mark alone. */
  id: string;
  /** One CSS pixel in drawing units. */
  px: number;
  isSmall: boolean;
  hasWords: boolean;
}

/** One mark of a drawing. Crow's feet, ticks and words keep their size whatever that of the drawing is. */
export function DrawnMark({ mark, id, px, isSmall, hasWords }: Props) {
  switch (mark.kind) {
    case "tell":
      return (
        <path
          d={crowsFoot(mark.from, mark.to, TOE[isSmall ? "small" : "full"] * px)}
          className={styles["knife"]}
          data-tells=""
        />
      );
    case "span":
      return <path d={ticked(mark.from, mark.to, 3.5 * px)} className={styles["knife"]} data-tells="" />;
    case "tone":
      return <ToneOf d={mark.d} tone={mark.tone} id={id} px={px} isSmall={isSmall} />;
    case "says":
      return hasWords ? (
        <text x={mark.at[0]} y={mark.at[1]} fontSize={WORD * px} textAnchor={mark.anchor}>
          {mark.text}
        </text>
      ) : null;
    case "scale": {
      if (!hasWords) return null;
      const to: Point = [SCALE[0] + mark.mm * mark.unitsPerMm, SCALE[1]];
      return (
        <>
          <path d={ticked(SCALE, to, 3 * px)} className={styles["measure"]} />
          <text x={to[0] + 5 * px} y={to[1] + 4 * px} fontSize={WORD * px}>
            {mark.mm} mm
          </text>
        </>
      );
    }
    case "inset":
      return (
        <g transform={`translate(${n(mark.x)} ${n(mark.y)}) scale(${mark.scale})`}>
          {mark.marks.map((inner, i) => (
            <DrawnMark
              // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a drawing never change their order.
              key={i}
              mark={inner}
              id={`${id}-${i}`}
              px={px / mark.scale}
              isSmall={isSmall}
              hasWords={hasWords}
            />
          ))}
        </g>
      );
    default:
      return mark.within === undefined ? (
        <Lines mark={mark} />
      ) : (
        <>
          <clipPath id={id}>
            <path d={mark.within} clipRule="evenodd" />
          </clipPath>
          <g clipPath={`url(#${id})`}>
            <Lines mark={mark} />
          </g>
        </>
      );
  }
}

const Lines = ({ mark }: { mark: Extract<Mark, { kind: "body" | "line" | "knife" }> }) => (
  <>
    {mark.kind === "body" ? <path d={mark.d} fillRule="evenodd" className={styles["body"]} /> : null}
    <path d={mark.d} className={styles[mark.kind === "knife" ? "knife" : mark.weight]} />
  </>
);
