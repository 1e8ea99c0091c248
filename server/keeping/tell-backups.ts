import type { Metric, Tell } from "../ports/metrics.ts";
import { readBackupState } from "./backup-state.ts";

const gauge = (name: string, help: string, value: number, unit?: "seconds" | "bytes"): Metric => ({
  ...{ kind: "gauge", name, help, samples: [{ value }] },
  ...(unit === undefined ? {} : { unit }),
});

/** How the backups of a folder stand, as numbers. */
export const tellBackups =
  (folder: string): Tell =>
  async () => {
    const state = await readBackupState(folder);
    if (state === undefined) return [];
    const { lastTry, lastGood } = state;
    return [
      gauge(
        "scribeline_backup_failed",
        "1 if the newest try of a backup failed, its rehearsal included.",
        lastTry.code === undefined ? 0 : 1,
      ),
      ...(lastGood === undefined
        ? []
        : [
            gauge(
              "scribeline_backup_good_timestamp_seconds",
              "When the newest good backup was begun, in seconds since 1970.",
              Date.parse(lastGood.at) / 1000,
              "seconds",
            ),
            gauge("scribeline_backup_bytes", "Size of the newest good backup.", lastGood.bytes, "bytes"),
            gauge(
              "scribeline_backup_duration_seconds",
              "How long the newest good backup took, its rehearsal included.",
              lastGood.seconds,
              "seconds",
            ),
          ]),
    ];
  };
