import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { everySo } from "#server/ports/every-so.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it("[C29] what is done every so often is done once at a time, goes on after a failure, and stops", async () => {
  let begun = 0;
  const waiting: PromiseWithResolvers<void>[] = [];
  const failures: unknown[] = [];
  const act = () => {
    begun++;
    const one = Promise.withResolvers<void>();
    waiting.push(one);
    return one.promise;
  };
  const every = everySo(1000, act, (failure) => failures.push(failure));
  await vi.advanceTimersByTimeAsync(3500);
  expect(begun).toBe(1);
  waiting[0]?.reject("no store");
  await vi.advanceTimersByTimeAsync(1000);
  expect([begun, failures]).toEqual([2, ["no store"]]);
  let hasStopped = false;
  const stopped = every.stop().then(() => {
    hasStopped = true;
  });
  await vi.advanceTimersByTimeAsync(5000);
  expect([begun, hasStopped]).toEqual([2, false]);
  waiting[1]?.resolve();
  await stopped;
  expect(begun).toBe(2);
});
