import type { Metric, Tell } from "../../ports/metrics.ts";
import type { Mirror } from "./open-mirror.ts";

/** What a mirror tells of itself. */
export const tellMirror =
  (mirror: Mirror): Tell =>
  () => {
    const now = mirror.status();
    const gauge = (name: string, value: number, help: string, unit?: "bytes"): Metric => ({
      kind: "gauge",
      name,
      help,
      ...(unit === undefined ? {} : { unit }),
      samples: [{ value }],
    });
    const counter = (name: string, value: number, help: string): Metric => ({
      kind: "counter",
      name,
      help,
      samples: [{ value }],
    });
    return [
      gauge(
        "scribeline_mirror_built",
        Number(now.isBuilt),
        "1 while walks of the newest revision run in memory, else 0.",
      ),
      gauge("scribeline_mirror_revision", now.revision, "Number of the revision that the mirror is at."),
      gauge("scribeline_mirror_claims", now.claims, "Claims that the mirror knows."),
      gauge(
        "scribeline_mirror_bytes",
        now.bytes,
        "What its arrays take; read claims and terms are kept beside them.",
        "bytes",
      ),
      counter("scribeline_mirror_builds", now.builds, "How often it was built."),
      counter("scribeline_mirror_checks", now.checks, "Asks at random that were compared with the store."),
      counter(
        "scribeline_mirror_differences",
        now.differences,
        "Comparisons that found another answer in the store.",
      ),
      counter(
        "scribeline_mirror_failures",
        now.failures,
        "How often it was given up because it could not be patched or read.",
      ),
    ];
  };
