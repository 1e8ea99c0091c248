import type { Derivation } from "../../domain/report.ts";
import type { StepInWords } from "../../domain/report-words.ts";
import { assumptionInWords } from "./assumption-in-words.ts";
import { claimInWords } from "./claim-in-words.ts";
import { capitalise } from "./list-in-words.ts";
import { placeInWords, type ReportReader } from "./report-reader.ts";
import { yearsInWords } from "./years-in-words.ts";

type Derived = Extract<Derivation, { kind: "derived" }>;

const JOINED: Readonly<Record<Derived["by"], string>> = {
  "all-of": "all of these together",
  "any-way": "one of these ways",
  way: "this way",
  rivals: "sources that disagree, taken loosely",
  diffusion: "the time it took to spread",
  places: "the places it can be from",
};

/** A chain that only passes on the years of its one way, or of what stands below it, needs no line of its own. */
function needsLine(node: Derived): boolean {
  return node.from.length > (node.by === "any-way" ? 2 : 1);
}

/** Numbers of the sub-trees that are pointed back to, which alone need their number shown. */
const toldAgain = (node: Derivation): readonly number[] => {
  if (node.kind === "told") return [node.ref];
  return node.kind === "claim" ? [] : node.from.flatMap(toldAgain);
};

function stepsOf(
  node: Derivation,
  depth: number,
  again: ReadonlySet<number>,
  reader: ReportReader,
): StepInWords[] {
  switch (node.kind) {
    case "claim": {
      const claim = reader.claimOf(node.claim);
      const sentence = claim === undefined ? node.claim : claimInWords(claim, reader.labelOf);
      return [{ depth, says: sentence, claim: node.claim, assumed: false }];
    }
    case "assumption":
      return [
        { depth, says: assumptionInWords(node.assumption, reader), assumed: true },
        ...node.from.flatMap((below) => stepsOf(below, depth + 1, again, reader)),
      ];
    case "told":
      return [{ depth, says: `As in (${node.ref}) above.`, assumed: false }];
    case "derived": {
      const hasLine = needsLine(node) || again.has(node.ref);
      const steps = node.from.flatMap((part) => stepsOf(part, hasLine ? depth + 1 : depth, again, reader));
      if (!hasLine) return steps;
      const where = node.place === null ? "" : ` in ${placeInWords(node.place, reader)}`;
      const number = again.has(node.ref) ? ` (${node.ref})` : "";
      const line = `${capitalise(reader.labelOf(node.term))}${where}: ${yearsInWords(node.years)}, by ${JOINED[node.by]}${number}.`;
      return [{ depth, says: line, assumed: false }, ...steps];
    }
  }
}

/** A derivation as indented steps: what follows first, what it follows from below it, each claim once with its id. */
export const stepsInWords = (
  derivation: Derivation | undefined,
  reader: ReportReader,
): readonly StepInWords[] =>
  derivation === undefined ? [] : stepsOf(derivation, 0, new Set(toldAgain(derivation)), reader);
