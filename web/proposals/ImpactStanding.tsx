import { Standing } from "../shared/ui/Standing.tsx";
import styles from "./Impact.module.css";
import type { ImpactRun, SoFar } from "./use-impact.ts";

type Count = NonNullable<SoFar>;

/** "214 of 710 pieces looked at". */
const sayCount = ({ looked, of }: Count): string =>
  `${looked} of ${of} ${of === 1 ? "piece" : "pieces"} looked at`;

/** "something would be said otherwise of 33 of them". */
const sayMoved = ({ moved }: Count): string =>
  `something would be said otherwise of ${moved === 0 ? "none" : moved} of them`;

/** How far the impact is: what is being done, how much of it is done and what was found, that it was stopped, or that it failed. */
export function ImpactStanding({ run: { standing, stop, again } }: { run: ImpactRun }) {
  switch (standing.kind) {
    case "working":
      return (
        <Standing count={<Bar soFar={standing.soFar} />} act={{ says: "Stop", onPress: stop }}>
          Examining every stored piece that it can touch, as the evidence stands and as it would stand …
        </Standing>
      );
    case "stopped":
      return (
        <Standing act={{ says: "Work it out", onPress: again }}>
          {standing.soFar
            ? `Stopped with ${sayCount(standing.soFar)}; ${sayMoved(standing.soFar)}. What it would do to the rest is not known.`
            : "Stopped. What accepting it would do is not known."}
        </Standing>
      );
    case "failed":
      return (
        <Standing hasFailed act={{ says: "Try again", onPress: again }}>
          {standing.says}
        </Standing>
      );
    case "unfit":
      return <p>The evidence would not take it as it stands, so nothing can be foreseen.</p>;
    case "told":
      return null;
  }
}

/** The count is drawn as it comes, and read out only to who goes to the bar. */
const Bar = ({ soFar }: { soFar: SoFar }) => {
  const says = soFar ? `${sayCount(soFar)}; ${sayMoved(soFar)}` : undefined;
  return (
    <span className={styles["count"]}>
      <progress
        aria-label="Stored pieces looked at"
        {...(soFar ? { max: Math.max(1, soFar.of), value: soFar.looked, "aria-valuetext": says } : {})}
      />
      {says ? <span aria-hidden="true">{says}</span> : null}
    </span>
  );
};
