import cytoscape, { type Core } from "cytoscape";
import { useEffect, useRef, useState } from "react";
import { drawPicture } from "./controllers/draw-picture.ts";
import { followAppearance } from "./controllers/follow-appearance.ts";
import { followTaps } from "./controllers/follow-taps.ts";
import { lightPath } from "./controllers/light-path.ts";
import styles from "./PathView.module.css";
import type { Picture } from "./path-picture.ts";

interface Props {
  picture: Picture;
  lit: string | undefined;
  onLight: (path: string | undefined) => void;
}

/** The drawing itself, at its own size in a frame that scrolls. What it shows stands beside it as text. */
export function PathCanvas({ picture, lit, onLight }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const [graph, setGraph] = useState<Core>();
  useEffect(() => {
    if (!frame.current) return;
    const made = cytoscape({
      container: frame.current,
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
  useEffect(() => graph && drawPicture(graph, picture), [graph, picture]);
  useEffect(() => graph && followTaps(graph, picture, onLight), [graph, picture, onLight]);
  useEffect(
    () =>
      graph &&
      lightPath(
        graph,
        picture.paths.find((path) => path.id === lit),
      ),
    [graph, picture, lit],
  );
  return (
    <div
      className={styles["frame"]}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keyboard scrolls a drawing that is wider than its frame.
      tabIndex={0}
      role="img"
      aria-label="The ways, drawn. The list below says the same."
    >
      <div
        ref={frame}
        className={styles["canvas"]}
        style={{ width: picture.width, height: picture.height }}
        aria-hidden="true"
      />
    </div>
  );
}
