import cytoscape, { type Core } from "cytoscape";
import { useEffect, useRef, useState } from "react";
import { drawPlate } from "./controllers/draw-plate.ts";
import { followAppearance } from "./controllers/follow-appearance.ts";
import { followTaps } from "./controllers/follow-taps.ts";
import { lightParts } from "./controllers/light-parts.ts";
import styles from "./PlateView.module.css";
import type { Plate } from "./plate.ts";

interface Props {
  plate: Plate;
  lit: ReadonlySet<string> | undefined;
  onTap: (part: string | undefined) => void;
}

/** Least pixels of the canvas for one of the page: text drawn on a canvas is soft with fewer. */
const LEAST_RATIO = 2;

/** A drawing for the hand, at its own size. What it shows stands beside it as text. */
export function PlateCanvas({ plate, lit, onTap }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const [graph, setGraph] = useState<Core>();
  useEffect(() => {
    if (!frame.current) return;
    const made = cytoscape({
      container: frame.current,
      pixelRatio: Math.max(LEAST_RATIO, devicePixelRatio),
      autoungrabify: true,
      userPanningEnabled: false,
      userZoomingEnabled: false,
      boxSelectionEnabled: false,
      autounselectify: true,
    });
    setGraph(made);
    return () => made.destroy();
  }, []);
  useEffect(() => graph && followAppearance(graph), [graph]);
  useEffect(() => graph && drawPlate(graph, plate), [graph, plate]);
  useEffect(() => graph && followTaps(graph, onTap), [graph, onTap]);
  useEffect(() => graph && lightParts(graph, plate, lit), [graph, plate, lit]);
  return (
    <div
      ref={frame}
      className={styles["canvas"]}
      style={{ width: plate.width, height: plate.height }}
      aria-hidden="true"
    />
  );
}
