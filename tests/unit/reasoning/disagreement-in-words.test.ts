import { describe, expect, it } from "vitest";
import type { Disagreement } from "#server/reasoning/disagreements/rule.ts";
import { disagreementInWords } from "#server/reasoning/explain/disagreement-in-words.ts";

const labels: Readonly<Record<string, string>> = { F: "round saw marks", S: "the South" };
const say = (found: Partial<Disagreement>) =>
  disagreementInWords(
    { id: "x", term: "F", claims: ["a", "b"], ...found } as unknown as Disagreement,
    (id) => labels[id] ?? id,
  );
const inSouth = { region: "S" } as unknown as Partial<Disagreement>;

describe("[Q8] a finding as a sentence", () => {
  it.each<[string, Partial<Disagreement>, string]>([
    [
      "with its place and years",
      { ...inSouth, rule: "attested-before-introduced", years: 12 },
      "Round saw marks: on record in the South 12 years before the earliest year given for its introduction.",
    ],
    [
      "of one year, of no place",
      { rule: "narrower-before-wider", years: 1 },
      "Round saw marks: introduced one year before the wider claim has it at all.",
    ],
    [
      "where no years can be counted",
      { rule: "common-before-introduced" },
      "Round saw marks: in use long before the earliest year given for its introduction.",
    ],
    [
      "of rivals, by what they disagree on",
      { ...inSouth, rule: "rivals", relation: "discontinued", years: 4 },
      "Round saw marks: two claims of when it was last made in the South disagree, by four years or more.",
    ],
    [
      "of a circle, from where it set out",
      { ...inSouth, rule: "spread-in-a-circle", years: 5 },
      "Round saw marks: its spread leads back to the South, at least five years after it set out.",
    ],
    [
      "of a place",
      { term: "S", rule: "one-source" } as unknown as Partial<Disagreement>,
      "The South: two claims of its own, and one source for all that is published.",
    ],
  ])("%s", (_, found, sentence) => {
    expect(say(found)).toBe(sentence);
  });
});
