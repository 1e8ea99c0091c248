import { describe, expect, it } from "vitest";
import { readInTurn } from "#web/shared/live/read-in-turn.ts";

const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe("[J11] reading a page anew", () => {
  it("is one reading at a time, and one more for all that was told meanwhile", async () => {
    let atOnce = 0;
    let most = 0;
    let times = 0;
    const ask = readInTurn(async () => {
      most = Math.max(most, ++atOnce);
      times++;
      await later(10);
      atOnce--;
    }, 1);
    for (let i = 0; i < 20; i++) ask();
    await later(80);
    expect({ most, times }).toEqual({ most: 1, times: 2 });
    ask();
    await later(40);
    expect({ most, times }).toEqual({ most: 1, times: 3 });
  });

  it("goes on after one that failed", async () => {
    let times = 0;
    const ask = readInTurn(async () => {
      times++;
      throw new Error("not reached");
    }, 1);
    ask();
    await later(20);
    ask();
    await later(20);
    expect(times).toBe(2);
  });
});
