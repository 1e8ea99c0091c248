import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";
import { readBackupState } from "./backup-state.ts";

/** How the backups of a folder stand, as numbers. */
export const tellBackups =
  (folder: string): Tell =>
  async () => {
    const state = await readBackupState(folder);
    if (state === undefined) return [];
    const { lastTry, lastGood } = state;
    return [
      oneGauge(
        {
          name: "scribeline_backup_failed",
          help: "1 if the newest try of a backup failed, its rehearsal included.",
        },
        lastTry.code === undefined ? 0 : 1,
      ),
      ...(lastGood === undefined
        ? []
        : [
            oneGauge(
              {
                name: "scribeline_backup_good_timestamp_seconds",
                help: "When the newest good backup was begun, in seconds since 1970.",
                unit: "seconds",
              },
              Date.parse(lastGood.at) / 1000,
            ),
            oneGauge(
              { name: "scribeline_backup_bytes", help: "Size of the newest good backup.", unit: "bytes" },
              lastGood.bytes,
            ),
            oneGauge(
              {
                name: "scribeline_backup_duration_seconds",
                help: "How long the newest good backup took, its rehearsal included.",
                unit: "seconds",
              },
              lastGood.seconds,
            ),
          ]),
    ];
  };
