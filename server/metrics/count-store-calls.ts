import { isProblem, type ProblemCode } from "../domain/problem.ts";
import type { Tell } from "../ports/metrics.ts";
import type { Store } from "../ports/store.ts";
import { StoreFailed } from "../ports/store-failed.ts";
import { WRITES } from "../ports/writes.ts";
import { openCounter } from "./open-counter.ts";
import { openHistogram } from "./open-histogram.ts";

const MEDIUM: ReadonlySet<string> = new Set([
  "STORE_FULL",
  "STORE_LOCKED",
  "STORE_CORRUPT",
  "STORE_UNREACHABLE",
] satisfies readonly ProblemCode[]);

/** The same store, and what it was called for: how often, how long it took, and what came of it by code. */
export function countStoreCalls(
  store: Store,
  now: () => number,
): { readonly store: Store; readonly tell: Tell } {
  const calls = openCounter({
    name: "scribeline_store_calls",
    help: "Calls of the store, by what was called and whether it was answered, refused or failed.",
  });
  const refusals = openCounter({
    name: "scribeline_store_refusals",
    help: "Writes that the store refused, by code.",
  });
  const failures = openCounter({
    name: "scribeline_store_failures",
    help: "Calls in which the medium of the store failed, by code.",
  });
  const seconds = openHistogram({
    name: "scribeline_store_seconds",
    help: "How long the store took for a read or a write.",
    unit: "seconds",
  });
  const ended = (call: string, since: number, value: unknown, threw: boolean): void => {
    const way = WRITES.has(call) ? "write" : "read";
    const problem = isProblem(value) ? value : value instanceof StoreFailed ? value.problem : undefined;
    const code = problem?.code ?? (threw ? "DEFECT" : undefined);
    const failed = threw || MEDIUM.has(code ?? "");
    const outcome = failed ? "failed" : code ? "refused" : "answered";
    calls.add({ call, way, outcome });
    seconds.take((now() - since) / 1000, { way });
    if (code) (failed ? failures : refusals).add({ code });
  };
  const counted = new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name, target);
      if (typeof member !== "function" || typeof name !== "string" || name === "close") return member;
      return (...args: unknown[]) => {
        const since = now();
        const result: unknown = Reflect.apply(member, target, args);
        if (!(result instanceof Promise)) return result;
        return result.then(
          (value: unknown) => {
            ended(name, since, value, false);
            return value;
          },
          (error: unknown) => {
            ended(name, since, error, true);
            throw error;
          },
        );
      };
    },
  });
  return {
    store: counted,
    tell: () => [calls.tell(), refusals.tell(), failures.tell(), seconds.tell()],
  };
}
