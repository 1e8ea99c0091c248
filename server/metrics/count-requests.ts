import type { Tell } from "../ports/metrics.ts";
import { oneGauge } from "../ports/one-number.ts";
import { openCounter } from "./open-counter.ts";
import { openHistogram } from "./open-histogram.ts";

/** What was asked for, by its path. */
export type RequestKind = "api" | "page" | "file" | "health" | "metrics";

export interface RequestCount {
  /** A request has come; the call that comes of it is made once, when it is over. 0: nobody waited for the answer. */
  begin(kind: RequestKind): (status: number) => void;
  readonly tell: Tell;
}

/** Counts requests by kind and status, with how long they took. `now` counts milliseconds. */
export function countRequests(now: () => number): RequestCount {
  const requests = openCounter({
    name: "scribeline_requests",
    help: "Requests that were answered, by kind and status; status 0: the asker was gone first.",
  });
  const seconds = openHistogram({
    name: "scribeline_request_seconds",
    help: "From the head of a request to the end of its answer.",
    unit: "seconds",
  });
  let underWay = 0;
  return {
    begin: (kind) => {
      const since = now();
      underWay++;
      return (status) => {
        underWay--;
        requests.add({ kind, status: String(status) });
        seconds.take((now() - since) / 1000, { kind });
      };
    },
    tell: () => [
      requests.tell(),
      seconds.tell(),
      oneGauge(
        { name: "scribeline_requests_under_way", help: "Requests that are being answered." },
        underWay,
      ),
    ],
  };
}
