import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";

/** What examines stored examinations again tells of itself. */
interface Told {
  readonly progress: () => { readonly known: number; readonly waiting: number; readonly left: number };
  readonly measures: () => { readonly examined: number; readonly cutOff: number };
}

/** How far the stored examinations are examined on what the graph says now. */
export const tellStandings =
  ({ progress, measures }: Told): Tell =>
  () => {
    const { known, waiting, left } = progress();
    const { examined, cutOff } = measures();
    return [
      oneGauge({ name: "scribeline_standings_known", help: "Stored examinations that are followed." }, known),
      oneGauge(
        {
          name: "scribeline_standings_waiting",
          help: "Of these, those still to be examined on the newest graph.",
        },
        waiting,
      ),
      oneGauge(
        { name: "scribeline_standings_left_out", help: "Stored examinations beyond what is followed." },
        left,
      ),
      {
        kind: "counter",
        name: "scribeline_standings_examined",
        help: "Stored examinations that were looked at after a change: examined anew, or spared because nothing they read had changed.",
        samples: [
          { labels: { outcome: "examined" }, value: examined },
          { labels: { outcome: "spared" }, value: cutOff },
        ],
      },
    ];
  };
