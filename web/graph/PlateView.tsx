import type { RefCallback } from "react";
import type { Year } from "#server/domain/years.ts";
import type { YearAxis } from "#web/shared/years/year-axis.ts";
import { PlateCanvas } from "./PlateCanvas.tsx";
import { PlateHead } from "./PlateHead.tsx";
import { PlateOnPaper } from "./PlateOnPaper.tsx";
import styles from "./PlateView.module.css";
import type { Plate } from "./plate.ts";

interface Props {
  /** The drawing for the frame as wide as it is; undefined before that is known. */
  plate: Plate | undefined;
  /** The same for a page of paper. */
  paper: Plate;
  frame: RefCallback<HTMLElement>;
  axis: YearAxis;
  /** Without years there is no scale above it. */
  hasYears?: boolean;
  /** Years that the claim begins and ends with, marked above the drawing. */
  claimed?: readonly [Year | null, Year | null];
  lit: ReadonlySet<string> | undefined;
  onTap: (part: string | undefined) => void;
  /** What is drawn, and where the same is said. */
  label: string;
}

/** Width of a drawing on paper, px: that of the type area of a page. */
export const PAPER_WIDTH = 680;

/** A drawing with its years above it: on a canvas for the hand, in lines for paper. */
export const PlateView = ({ plate, paper, frame, hasYears = true, lit, onTap, label, ...years }: Props) => (
  <div>
    <div ref={frame} className={styles["screen"]} role="img" aria-label={label}>
      {plate ? (
        <>
          {hasYears ? <PlateHead plate={plate} {...years} className={styles["head"]} /> : null}
          <PlateCanvas plate={plate} lit={lit} onTap={onTap} />
        </>
      ) : null}
    </div>
    <div className={styles["onPaper"]}>
      {hasYears ? <PlateHead plate={paper} {...years} className={styles["paperHead"]} /> : null}
      <PlateOnPaper plate={paper} />
    </div>
  </div>
);
