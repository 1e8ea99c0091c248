import type { Log } from "../ports/log.ts";
import { type BackupState, readBackupState } from "./backup-state.ts";

export interface BackupSchedule {
  readonly folder: string;
  /** Hours from one good backup to the next. */
  readonly hours: number;
  /** Makes one backup; resolves when it has ended, well or not. */
  readonly run: () => Promise<void>;
  readonly now: () => Date;
  readonly log: Log;
  /** Milliseconds between two looks whether one is due. */
  readonly lookEvery?: number;
}

const HOUR = 3_600_000;
/** Milliseconds until a backup that failed is tried again, if the next is not due before. */
const TRY_AGAIN = HOUR / 4;
/** Looks that pass without another try, also where nothing could be kept of the last one. */
const LOOKS_BETWEEN = 10;

/**
 * Makes a backup whenever the newest good one is older than it should be. When that was is read from the folder, so that it
 * does not matter how often the server was started, and one of several servers does it for all. Gives what ends it.
 */
export function scheduleBackups(schedule: BackupSchedule): () => void {
  const { folder, now, log, run, lookEvery = 60_000 } = schedule;
  let isBusy = false;
  /** When it was last made here, by a clock that is never set. */
  let ran = Number.NEGATIVE_INFINITY;
  const look = async (): Promise<void> => {
    if (isBusy || performance.now() - ran < lookEvery * LOOKS_BETWEEN) return;
    isBusy = true;
    try {
      const before = await readBackupState(folder);
      if (!isDue(before, now(), schedule.hours)) return;
      ran = performance.now();
      await run();
      const after = await readBackupState(folder);
      if (after?.lastTry.at !== before?.lastTry.at) tell(log, after);
    } catch (failure) {
      log({ level: "error", event: "backup", code: "FAILED", message: String(failure) });
    } finally {
      isBusy = false;
    }
  };
  void look();
  const timer = setInterval(() => void look(), lookEvery);
  timer.unref();
  return () => clearInterval(timer);
}

/** Whether a backup has to be made. A time that has not come yet is one of a clock that was set back, and counts as none. */
export function isDue(state: BackupState | undefined, now: Date, hours: number): boolean {
  if (state === undefined) return true;
  const age = (at: string): number => {
    const passed = now.getTime() - Date.parse(at);
    return passed >= 0 ? passed : Number.POSITIVE_INFINITY;
  };
  const wanted = hours * HOUR;
  if (state.lastGood !== undefined && age(state.lastGood.at) < wanted) return false;
  const isFailed = state.lastTry.code !== undefined;
  return !isFailed || age(state.lastTry.at) >= Math.min(TRY_AGAIN, wanted);
}

function tell(log: Log, state: BackupState | undefined): void {
  if (state === undefined) log({ level: "error", event: "backup", code: "NOT_TOLD" });
  else if (state.lastTry.code !== undefined)
    log({ level: "error", event: "backup", code: state.lastTry.code, message: state.lastTry.message });
  else log({ level: "info", event: "backup", ...state.lastGood });
}
