import { Standing } from "#web/shared/ui/Standing.tsx";
import { useRun } from "./weighing-desk.ts";
import { STEPS, sayStep, stagesFrom } from "./weighing-steps.ts";

/** How far the weighing is: what is worked out now, what was stopped or failed and is missing. */
export function WeighingStanding() {
  const { standing, weighed, stop, goOn } = useRun();
  const missing = weighed.missing.join(" ");
  switch (standing.kind) {
    case "waiting":
      return <Standing>What is probable is worked out after the years below.</Standing>;
    case "working":
      return (
        <Standing act={{ says: "Stop", onPress: stop }}>
          Working out {sayStep(standing.step)} … {standing.step + 1} of {STEPS.length}.
        </Standing>
      );
    case "stopped":
      return (
        <Standing act={{ says: "Go on", onPress: goOn }}>
          Stopped. Not worked out: {stagesFrom(standing.step).join("; ")}.
        </Standing>
      );
    case "failed":
      return (
        <Standing hasFailed act={{ says: "Try again", onPress: goOn }}>
          {standing.says} Not worked out: {stagesFrom(standing.step).join("; ")}.
        </Standing>
      );
    case "done":
      return (
        <Standing>
          {missing === "" ? "Weighed under what is assumed, which stands at the end of the page." : missing}
        </Standing>
      );
  }
}
