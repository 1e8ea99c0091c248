import type { Metric, Tell } from "../ports/metrics.ts";
import { oneCounter, oneGauge } from "../ports/one-number.ts";
import { openHistogram } from "./open-histogram.ts";

/** Milliseconds between two looks at how late a timer comes. */
const LOOK_EVERY = 100;

/** What the process uses, under the names that are in general use. `stop` ends the looks at the event loop. */
export function watchProcess(now: () => number): { readonly tell: Tell; readonly stop: () => void } {
  const lag = openHistogram({
    name: "scribeline_event_loop_lag_seconds",
    help: "How much later than asked for a timer came: what else kept the thread.",
    unit: "seconds",
  });
  let due = now() + LOOK_EVERY;
  const timer = setInterval(() => {
    lag.take(Math.max(0, now() - due) / 1000);
    due = now() + LOOK_EVERY;
  }, LOOK_EVERY);
  timer.unref();
  const startedAt = Date.now() / 1000 - process.uptime();
  return {
    tell: () => {
      const { user, system } = process.cpuUsage();
      const { rss, heapUsed, external } = process.memoryUsage();
      return [
        oneCounter(
          {
            name: "process_cpu_seconds",
            help: "Processor time of all threads, user and system.",
            unit: "seconds",
          },
          (user + system) / 1e6,
        ),
        bytes("process_resident_memory_bytes", "Resident memory.", rss),
        bytes("nodejs_heap_used_bytes", "Memory of the values of the main thread.", heapUsed),
        bytes("nodejs_external_memory_bytes", "Memory outside of it, such as arrays of numbers.", external),
        oneGauge(
          {
            name: "process_start_time_seconds",
            help: "When the process began, in seconds since 1970.",
            unit: "seconds",
          },
          startedAt,
        ),
        lag.tell(),
      ];
    },
    stop: () => clearInterval(timer),
  };
}

const bytes = (name: string, help: string, value: number): Metric =>
  oneGauge({ name, help, unit: "bytes" }, value);
