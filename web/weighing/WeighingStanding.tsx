import { Button } from "#web/shared/ui/Button.tsx";
import styles from "./WeighedHeadline.module.css";
import { useRun } from "./weighing-desk.ts";
import { STEPS, sayStep, stagesFrom } from "./weighing-steps.ts";

/** How far the weighing is: what is worked out now, what was stopped or failed and is missing. */
export function WeighingStanding() {
  const { standing, weighed, stop, goOn } = useRun();
  const missing = weighed.missing.join(" ");
  switch (standing.kind) {
    case "waiting":
      return (
        <p className={styles["standing"]} role="status">
          The piece is weighed once the strips stand.
        </p>
      );
    case "working":
      return (
        <div className={styles["standing"]}>
          <p role="status">
            Working out {sayStep(standing.step)} … {standing.step + 1} of {STEPS.length}.
          </p>
          <span className="screen-only">
            <Button look="quiet" onPress={stop}>
              Stop
            </Button>
          </span>
        </div>
      );
    case "stopped":
      return (
        <div className={styles["standing"]}>
          <p role="status">Stopped. Not worked out: {stagesFrom(standing.step).join("; ")}.</p>
          <span className="screen-only">
            <Button look="quiet" onPress={goOn}>
              Go on
            </Button>
          </span>
        </div>
      );
    case "failed":
      return (
        <div className={styles["standing"]}>
          <p role="alert" className={styles["problem"]}>
            {standing.says} Not worked out: {stagesFrom(standing.step).join("; ")}.
          </p>
          <span className="screen-only">
            <Button look="quiet" onPress={goOn}>
              Try again
            </Button>
          </span>
        </div>
      );
    case "done":
      return (
        <p className={styles["standing"]} role="status">
          {missing === "" ? "Weighed under what is assumed, which stands at the end of the page." : missing}
        </p>
      );
  }
}
