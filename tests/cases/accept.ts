import { writeFileSync } from "node:fs";
import { caseFile, caseNames, reportAsLines, runCase, wordsAsLines } from "./run-case.ts";

for (const name of caseNames()) {
  const { report, words } = await runCase(name);
  writeFileSync(caseFile(name, "report.json"), reportAsLines(report));
  writeFileSync(caseFile(name, "words.txt"), wordsAsLines(words));
  process.stdout.write(`${name}\n`);
}
