import { n } from "../pen.ts";
import styles from "./DrawnFeature.module.css";
import { SIDE, type Tone } from "./mark.ts";

/** Distance between the lines or dots of a tone in CSS pixels: in a drawing, and in a small one. */
const PITCH: Readonly<Record<Tone, readonly [full: number, small: number]>> = {
  section: [6, 4.2],
  dark: [3, 2.6],
  dots: [5, 3.6],
};
const DOT = 0.6;

/** Lines over the whole square: at 45 degrees for a section, level for dark wood. */
function linesOf(tone: "section" | "dark", pitch: number): string {
  const step = tone === "section" ? pitch * Math.SQRT2 : pitch;
  const reach = tone === "section" ? 2 * SIDE : SIDE;
  return Array.from({ length: Math.ceil(reach / step) }, (_, i) => {
    const at = n((i + 0.5) * step);
    return tone === "section" ? `M0 ${at}L${at} 0` : `M0 ${at}H${SIDE}`;
  }).join("");
}

interface Props {
  d: string;
  tone: Tone;
  /** Of this surface alone. */
  id: string;
  /** One CSS pixel in drawing units. */
  px: number;
  isSmall: boolean;
}

/**
 * A surface told apart by lines or dots: 45 degrees at 6 px for a cut face, close level lines for darkened wood, dots
 * for a film or shadow. Real lines, since those of a pattern blur.
 */
export function ToneOf({ d, tone, id, px, isSmall }: Props) {
  const pitch = PITCH[tone][isSmall ? 1 : 0] * px;
  if (tone === "dots")
    return (
      <>
        <pattern id={id} width={pitch} height={pitch} patternUnits="userSpaceOnUse">
          <circle cx={pitch / 4} cy={pitch / 4} r={DOT * px} fill="currentColor" />
          <circle cx={(pitch * 3) / 4} cy={(pitch * 3) / 4} r={DOT * px} fill="currentColor" />
        </pattern>
        <path d={d} fillRule="evenodd" className={styles["dots"]} style={{ fill: `url(#${id})` }} />
      </>
    );
  return (
    <>
      <clipPath id={id}>
        <path d={d} clipRule="evenodd" />
      </clipPath>
      <path d={linesOf(tone, pitch)} clipPath={`url(#${id})`} className={styles["detail"]} data-tone={tone} />
    </>
  );
}
