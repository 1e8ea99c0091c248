import { Button } from "../shared/ui/Button.tsx";
import styles from "./Impact.module.css";
import type { ImpactRun, SoFar } from "./use-impact.ts";

/** "214 of 710 pieces looked at". */
const sayCount = ({ looked, of }: NonNullable<SoFar>): string =>
  `${looked} of ${of} ${of === 1 ? "piece" : "pieces"} looked at`;

/** How far the impact is: what is being done and how much of it is done, that it was stopped, or that it failed. */
export function ImpactStanding({ run: { standing, stop, again } }: { run: ImpactRun }) {
  switch (standing.kind) {
    case "working":
      return (
        <div className={styles["waiting"]}>
          <p role="status">
            Examining every stored piece that it can touch, as the evidence stands and as it would stand …
          </p>
          <Bar soFar={standing.soFar} />
          <span className="screen-only">
            <Button look="quiet" onPress={stop}>
              Stop
            </Button>
          </span>
        </div>
      );
    case "stopped":
      return (
        <div className={styles["waiting"]}>
          <p role="status">
            Stopped{standing.soFar ? ` with ${sayCount(standing.soFar)}` : ""}. What accepting it would do is
            not known.
          </p>
          <span className="screen-only">
            <Button look="quiet" onPress={again}>
              Work it out
            </Button>
          </span>
        </div>
      );
    case "failed":
      return (
        <p role="alert">
          {standing.says}{" "}
          <Button look="quiet" onPress={again}>
            Try again
          </Button>
        </p>
      );
    case "unfit":
      return <p>The evidence would not take it as it stands, so nothing can be foreseen.</p>;
    case "told":
      return null;
  }
}

/** The count is drawn as it comes, and read out only to who goes to the bar. */
const Bar = ({ soFar }: { soFar: SoFar }) => (
  <span className={styles["count"]}>
    <progress
      aria-label="Stored pieces looked at"
      {...(soFar
        ? { max: Math.max(1, soFar.of), value: soFar.looked, "aria-valuetext": sayCount(soFar) }
        : {})}
    />
    {soFar ? <span aria-hidden="true">{sayCount(soFar)}</span> : null}
  </span>
);
