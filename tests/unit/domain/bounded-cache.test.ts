import { describe, expect, it } from "vitest";
import { boundedCache } from "#server/domain/bounded-cache.ts";

describe("a bounded cache", () => {
  it("gives what was put in last", () => {
    const cache = boundedCache<string, number>(10);
    cache.set("a", 1);
    cache.set("a", 2);
    expect(cache.get("a")).toBe(2);
    expect(cache.get("b")).toBeUndefined();
  });

  it("keeps no more than it may, however much is put in", () => {
    const cache = boundedCache<number, number>(10);
    for (let n = 0; n < 1000; n++) cache.set(n, n);
    const kept = Array.from({ length: 1000 }, (_, n) => n).filter((n) => cache.get(n) !== undefined);
    expect(kept.length).toBeLessThanOrEqual(10);
    expect(kept).toContain(999);
  });

  it("keeps what is used again and again", () => {
    const cache = boundedCache<number, string>(10);
    cache.set(-1, "used");
    for (let n = 0; n < 1000; n++) {
      cache.set(n, "not used");
      expect(cache.get(-1)).toBe("used");
    }
  });

  it("forgets what it is told to", () => {
    const cache = boundedCache<number, number>(4);
    for (let n = 0; n < 4; n++) cache.set(n, n);
    cache.delete(0);
    cache.delete(3);
    expect([0, 1, 2, 3].map((n) => cache.get(n))).toEqual([undefined, 1, 2, undefined]);
    cache.clear();
    expect(cache.get(1)).toBeUndefined();
  });
});
