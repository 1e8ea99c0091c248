import parsePrometheusTextFormat from "parse-prometheus-text-format";
import { describe, expect, it } from "vitest";
import { openCounter } from "#server/metrics/open-counter.ts";
import { openHistogram } from "#server/metrics/open-histogram.ts";
import { printMetrics } from "#server/metrics/print-metrics.ts";
import type { Metric } from "#server/ports/metrics.ts";

const HARD = 'a "quoted" back\\slash\nand a new line';

/** One of each kind, with what is hard to write. */
function someMetrics(): Metric[] {
  const counter = openCounter({ name: "scribeline_tries", help: "Tries so far." });
  counter.add({ code: "A" });
  counter.add({ code: "A" }, 2);
  counter.add({ code: HARD });
  const histogram = openHistogram(
    { name: "scribeline_try_seconds", help: "How long.", unit: "seconds" },
    [0.1, 1],
  );
  for (const value of [0.05, 0.1, 0.5, 3]) histogram.take(value, { way: "up" });
  const plain = openHistogram({ name: "scribeline_wait_seconds", help: "How long.", unit: "seconds" }, [1]);
  for (const value of [0.5, 2]) plain.take(value);
  return [
    counter.tell(),
    histogram.tell(),
    { kind: "gauge", name: "scribeline_level", help: HARD, samples: [{ value: -1.5 }] },
    plain.tell(),
    { kind: "gauge", name: "scribeline_none", help: "Nothing yet.", samples: [] },
  ];
}

// The rules of the text: OpenMetrics 1.0, "Text format"; before it the Prometheus exposition formats, "Text-based format", 0.0.4.
describe("metrics as text", () => {
  it("[H10] counts and adds up by labels", () => {
    const lines = printMetrics(someMetrics(), "openmetrics").split("\n");
    expect(lines.filter((line) => !line.startsWith("#"))).toEqual([
      'scribeline_tries_total{code="A"} 3',
      'scribeline_tries_total{code="a \\"quoted\\" back\\\\slash\\nand a new line"} 1',
      'scribeline_try_seconds_bucket{way="up",le="0.1"} 2',
      'scribeline_try_seconds_bucket{way="up",le="1.0"} 3',
      'scribeline_try_seconds_bucket{way="up",le="+Inf"} 4',
      'scribeline_try_seconds_sum{way="up"} 3.65',
      'scribeline_try_seconds_count{way="up"} 4',
      "scribeline_level -1.5",
      'scribeline_wait_seconds_bucket{le="1.0"} 1',
      'scribeline_wait_seconds_bucket{le="+Inf"} 2',
      "scribeline_wait_seconds_sum 2.5",
      "scribeline_wait_seconds_count 2",
      "",
    ]);
  });

  it("[H10] names the family of a counter without _total in the newer format, with it in the older, and ends the newer", () => {
    const newer = printMetrics(someMetrics(), "openmetrics");
    expect(newer).toContain("# TYPE scribeline_tries counter\n# HELP scribeline_tries Tries so far.\n");
    expect(newer).toContain("# UNIT scribeline_try_seconds seconds\n");
    expect(newer.endsWith("# EOF\n")).toBe(true);
    const older = printMetrics(someMetrics(), "plain");
    expect(older).toContain("# TYPE scribeline_tries_total counter\n");
    expect(older).not.toMatch(/# UNIT|# EOF/);
  });

  it("[H10] are read by a parser that is not ours as what they are", () => {
    const read = parsePrometheusTextFormat(printMetrics(someMetrics(), "plain"));
    expect(read).toMatchObject([
      {
        name: "scribeline_tries_total",
        type: "COUNTER",
        help: "Tries so far.",
        metrics: [
          { value: "3", labels: { code: "A" } },
          { value: "1", labels: { code: HARD } },
        ],
      },
      {
        name: "scribeline_try_seconds",
        type: "HISTOGRAM",
        metrics: [{ buckets: { "0.1": "2", "1.0": "3", "+Inf": "4" } }],
      },
      { name: "scribeline_level", type: "GAUGE", metrics: [{ value: "-1.5" }] },
      {
        name: "scribeline_wait_seconds",
        type: "HISTOGRAM",
        metrics: [{ buckets: { "1.0": "1", "+Inf": "2" }, count: "2", sum: "2.5" }],
      },
      { name: "scribeline_none" },
    ]);
  });
});
