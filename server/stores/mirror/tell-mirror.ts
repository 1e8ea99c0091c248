import type { Tell } from "../../ports/metrics.ts";
import { oneCounter, oneGauge } from "../../ports/one-number.ts";
import type { Mirror } from "./open-mirror.ts";

/** What a mirror tells of itself. */
export const tellMirror =
  (mirror: Mirror): Tell =>
  () => {
    const now = mirror.status();
    return [
      oneGauge(
        {
          name: "scribeline_mirror_built",
          help: "1 while walks of the newest revision run in memory, else 0.",
        },
        Number(now.isBuilt),
      ),
      oneGauge(
        { name: "scribeline_mirror_revision", help: "Number of the revision that the mirror is at." },
        now.revision,
      ),
      oneGauge({ name: "scribeline_mirror_claims", help: "Claims that the mirror knows." }, now.claims),
      oneGauge(
        {
          name: "scribeline_mirror_bytes",
          help: "What its arrays take; read claims and terms are kept beside them.",
          unit: "bytes",
        },
        now.bytes,
      ),
      oneCounter({ name: "scribeline_mirror_builds", help: "How often it was built." }, now.builds),
      oneCounter(
        { name: "scribeline_mirror_checks", help: "Asks at random that were compared with the store." },
        now.checks,
      ),
      oneCounter(
        {
          name: "scribeline_mirror_differences",
          help: "Comparisons that found another answer in the store.",
        },
        now.differences,
      ),
      oneCounter(
        {
          name: "scribeline_mirror_failures",
          help: "How often it was given up because it could not be patched or read.",
        },
        now.failures,
      ),
    ];
  };
