import { problem } from "../../domain/problem.ts";
import { inTime, TOO_LATE } from "../../ports/in-time.ts";
import type { Store } from "../../ports/store.ts";
import { WRITES } from "../../ports/writes.ts";
import type { Surveys } from "../../use-cases/ask/surveys/open-surveys.ts";
import { DeadlineExceeded } from "./deadline-exceeded.ts";

/**
 * The same store, or the same surveys of it, for one request: from `deadline` milliseconds after this call on, reads and writes are refused, so that
 * a request that has taken too long does no more work; one that is under way then is not waited for. Of a write that is
 * under way nobody knows whether it is kept, which its refusal says. `now` counts milliseconds.
 */
export function withinDeadline<Asked extends Store | Surveys>(
  store: Asked,
  deadline: number,
  now: () => number,
): Asked {
  const end = now() + deadline;
  return new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name, target);
      if (typeof member !== "function") return member;
      return (...args: unknown[]): unknown => {
        if (now() > end) throw new DeadlineExceeded(deadline);
        const answer: unknown = Reflect.apply(member, target, args);
        if (!(answer instanceof Promise)) return answer;
        return inTime(answer, end - now()).then((given) => {
          if (given !== TOO_LATE) return given;
          if (WRITES.has(name)) return notHeardOf(deadline);
          throw new DeadlineExceeded(deadline);
        });
      };
    },
  });
}

const notHeardOf = (deadline: number) =>
  problem(
    "STORE_UNREACHABLE",
    `The store did not answer within ${deadline} ms. Look first whether this was kept, then try again.`,
  );
