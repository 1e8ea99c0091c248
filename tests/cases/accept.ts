import { writeFileSync } from "node:fs";
import {
  caseFile,
  caseNames,
  isOnSeed,
  reportAsLines,
  runCase,
  weighingAsLines,
  wordsAsLines,
} from "./run-case.ts";

for (const name of caseNames()) {
  const { report, words, weighed } = await runCase(name);
  if (!isOnSeed(name)) writeFileSync(caseFile(name, "report.json"), reportAsLines(report));
  writeFileSync(caseFile(name, "words.txt"), wordsAsLines(words));
  if (weighed) writeFileSync(caseFile(name, "weighed.txt"), weighingAsLines(weighed.words));
  process.stdout.write(`${name}\n`);
}
