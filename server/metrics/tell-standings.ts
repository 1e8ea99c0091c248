import type { Metric, Tell } from "../ports/metrics.ts";

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
    const gauge = (name: string, help: string, value: number): Metric => ({
      kind: "gauge",
      name,
      help,
      samples: [{ value }],
    });
    return [
      gauge("scribeline_standings_known", "Stored examinations that are followed.", known),
      gauge(
        "scribeline_standings_waiting",
        "Of these, those still to be examined on the newest graph.",
        waiting,
      ),
      gauge("scribeline_standings_left_out", "Stored examinations beyond what is followed.", left),
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
