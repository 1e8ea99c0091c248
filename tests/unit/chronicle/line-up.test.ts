import { expect, it } from "vitest";
import { lineUp } from "#server/api/chronicle/line-up.ts";

/** What was begun and waits for its end. */
function openWork() {
  const ends: { readonly who: string; readonly end: () => void }[] = [];
  return {
    ends,
    run: (who: string) => () => new Promise<string>((resolve) => ends.push({ who, end: () => resolve(who) })),
  };
}
const turn = () => new Promise((resolve) => setImmediate(resolve));

it("[I17] of what reads much two of one person run at once, ten wait, and others go on meanwhile", async () => {
  const inLine = lineUp();
  const { ends, run } = openWork();
  const ask = (id: string, action = "give") => inLine(action, { id }, run(id));
  const hers = Array.from({ length: 13 }, () => ask("ann"));
  expect(await hers[12]).toBe("busy");
  const his = ask("ben", "feed");
  expect(ends.map(({ who }) => who)).toEqual(["ann", "ann", "ben"]);
  const light = ask("ann", "follow");
  ends.at(-1)?.end();
  expect(await light).toBe("ann");
  ends.find(({ who }) => who === "ben")?.end();
  expect(await his).toBe("ben");
  for (let begun = 0; begun < ends.length; begun++) {
    ends[begun]?.end();
    await turn();
  }
  expect(await Promise.all(hers)).toEqual([...Array(12).fill("ann"), "busy"]);
});

it("[I17] of all persons four run at once and forty wait, and a failure makes room", async () => {
  const inLine = lineUp();
  const { ends, run } = openWork();
  const all = Array.from({ length: 44 }, (_, n) => inLine("difference", { id: `p${n}` }, run(`p${n}`)));
  expect(ends).toHaveLength(4);
  expect(await inLine("take", { id: "late" }, run("late"))).toBe("busy");
  for (let begun = 0; begun < ends.length; begun++) {
    ends[begun]?.end();
    await turn();
  }
  expect(await Promise.all(all)).toHaveLength(44);
  await expect(inLine("give", { id: "x" }, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
  expect(await inLine("give", { id: "x" }, async () => "again")).toBe("again");
});
