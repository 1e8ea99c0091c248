import { describe, expect, it } from "vitest";
import { inWords, sayProgress } from "#server/say-progress.ts";

function shown(isTTY: boolean) {
  const written: string[] = [];
  let time = 0;
  const progress = sayProgress({ isTTY, write: (text: string) => written.push(text) }, () => time);
  return {
    written,
    ...progress,
    wait: (milliseconds: number) => {
      time += milliseconds;
    },
  };
}

describe("[S62] progress", () => {
  it("on a terminal is one line that is written over, and taken away at the end", () => {
    const { tell, done, wait, written } = shown(true);
    tell(() => "too soon");
    wait(100);
    tell(() => "one");
    wait(99);
    tell(() => "too soon");
    wait(1);
    tell(() => "two");
    done();
    done();
    expect(written).toEqual(["\rone\u001b[K", "\rtwo\u001b[K", "\r\u001b[K"]);
  });

  it("elsewhere is a line every ten seconds, whose words are not made in between", () => {
    const { tell, done, wait, written } = shown(false);
    for (let second = 0; second < 25; second++) {
      tell(() => {
        expect(second % 10).toBe(0);
        return `second ${second}`;
      });
      wait(1_000);
    }
    done();
    expect(written).toEqual(["second 10\n", "second 20\n"]);
  });

  it("shows whole numbers as people write them", () => {
    expect(inWords(1_234_567)).toBe("1,234,567");
  });
});
