import { describe, expect, it } from "vitest";
import { collectMetrics } from "#server/metrics/collect-metrics.ts";
import type { Metric } from "#server/ports/metrics.ts";

const level: Metric = { kind: "gauge", name: "scribeline_level", help: "A level.", samples: [{ value: 1 }] };

describe("what the parts of the program tell", () => {
  it("[H11] comes without the part that fails or hangs, and says which", async () => {
    const metrics = await collectMetrics(
      {
        sound: () => [level],
        broken: () => {
          throw new Error("no");
        },
        lost: () => Promise.reject(new Error("no")),
        hanging: () => new Promise(() => {}),
      },
      20,
    );
    expect(metrics).toEqual([
      level,
      expect.objectContaining({
        name: "scribeline_part_silent",
        samples: [
          { labels: { part: "sound" }, value: 0 },
          { labels: { part: "broken" }, value: 1 },
          { labels: { part: "lost" }, value: 1 },
          { labels: { part: "hanging" }, value: 1 },
        ],
      }),
    ]);
  });
});
