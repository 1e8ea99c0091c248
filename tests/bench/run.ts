import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Bench } from "./measure.ts";

/**
 * `npm run bench [-- word]`: measures every `*.bench.ts` here whose name holds the word, and prints each figure beside
 * what it is meant to stay within. Times differ from machine to machine; the ratios are what to look at.
 */
const [word = ""] = process.argv.slice(2);
const files = readdirSync(fileURLToPath(new URL(".", import.meta.url)))
  .filter((file) => file.endsWith(".bench.ts") && file.includes(word))
  .sort();
for (const file of files) {
  const { bench } = (await import(`./${file}`)) as { bench: Bench };
  console.log(file.replace(".bench.ts", ""));
  for (const { what, against, cost, costAgainst, atMost } of await bench()) {
    const ratio = cost / costAgainst;
    console.log(
      `  ${ratio <= atMost ? "within" : "OVER  "} ${ratio.toFixed(2)} (at most ${atMost}): ${what}, ${cost.toFixed(2)} ms, against ${against}, ${costAgainst.toFixed(2)} ms`,
    );
  }
}
