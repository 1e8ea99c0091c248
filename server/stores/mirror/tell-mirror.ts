import type { Metric, Tell } from "../../ports/metrics.ts";
import type { Mirror } from "./open-mirror.ts";

/** What a mirror tells of itself. */
export const tellMirror =
  (mirror: Mirror): Tell =>
  () => {
    const now = mirror.status();
    const gauge = (name: string, value: number, help: string, unit?: "bytes"): Metric => ({
      kind: "gauge",
      name: `scribeline_mirror_${name}`,
      help,
      ...(unit === undefined ? {} : { unit }),
      samples: [{ value }],
    });
    const counter = (name: string, value: number, help: string): Metric => ({
      kind: "counter",
      name: `scribeline_mirror_${name}`,
      help,
      samples: [{ value }],
    });
    return [
      gauge("built", Number(now.isBuilt), "1 while walks of the newest revision run in memory, else 0."),
      gauge("revision", now.revision, "Number of the revision that the mirror is at."),
      gauge("claims", now.claims, "Claims that the mirror knows."),
      gauge("bytes", now.bytes, "What its arrays take; read claims and terms are kept beside them.", "bytes"),
      counter("builds", now.builds, "How often it was built."),
      counter("checks", now.checks, "Asks at random that were compared with the store."),
      counter("differences", now.differences, "Comparisons that found another answer in the store."),
      counter("failures", now.failures, "How often it was given up because it could not be patched or read."),
    ];
  };
