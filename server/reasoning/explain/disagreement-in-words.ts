import type { Disagreement, RuleId } from "../disagreements/rule.ts";
import type { LabelOf } from "./claim-in-words.ts";
import { capitalise } from "./list-in-words.ts";
import { numberInWords } from "./number-in-words.ts";

/** What a rule is called, what it means that it found something, and what to do about it. */
export interface RuleWords {
  readonly title: string;
  readonly means: string;
  readonly remedy: string;
}

export const RULE_WORDS: Readonly<Record<RuleId, RuleWords>> = {
  "attested-before-introduced": {
    title: "On record before it was introduced",
    means:
      "One claim says that there was none before a certain time, and another has it on record earlier, in the same place or within it. Both cannot be right.",
    remedy:
      "Read the earlier record again: is it the same thing, and is its date that of the making? If it stands, the introduction has to move back or be confined to a narrower place.",
  },
  "common-before-introduced": {
    title: "In use before it was introduced",
    means:
      "A claim has the thing in use, or common, at a time when another says that it had not yet come in, in the same place or a wider one.",
    remedy:
      "Look whether both mean the same thing. Often one speaks of a hand-made and the other of a machine-made kind: then the term wants dividing. Else one of the dates is wrong.",
  },
  "narrower-before-wider": {
    title: "Earlier in a part than in the whole",
    means:
      "It is said to have come in somewhere before it came in anywhere in the wider place that holds it. The engine believes the nearer claim; the wider one is too late.",
    remedy: "Move the wider claim to the earliest year known anywhere in it, or confine it to the rest.",
  },
  rivals: {
    title: "Two dates for one thing",
    means:
      "Claims of the same thing, for the same place, give dates that have no year in common. The engine takes each as possible, so that a finding rests on them only where all agree.",
    remedy:
      "Compare what each cites. A patent, a first use and a common use are dates of different events, and what went out can come back: then both stand, and a note says so. Where one event is meant, reject the claim with the weaker ground and say why.",
  },
  "spread-in-a-circle": {
    title: "Spread in a circle",
    means:
      "Claims of how long the thing took from one place to the next lead back to where they began, later than it was there.",
    remedy: "Find out which of the ways went the other direction, and reject that claim.",
  },
  "one-source": {
    title: "A place known from one source",
    means:
      "All that is published about the place comes from a single source. Nothing there is disputed because nobody else was asked: its errors are ours, and its habits look like those of the place.",
    remedy: "Look for a second, independent source before leaning on what is said of this place.",
  },
};

/** One finding as one sentence; what each claim says stands beside it. */
export function disagreementInWords(found: Disagreement, labelOf: LabelOf): string {
  const what = capitalise(labelOf(found.term));
  const where = found.region === undefined ? "" : ` in ${labelOf(found.region)}`;
  const apart = found.years === undefined ? "long" : yearsInWords(found.years);
  switch (found.rule) {
    case "attested-before-introduced":
      return `${what}: on record${where} ${apart} before the earliest year given for its introduction.`;
    case "common-before-introduced":
      return `${what}: in use${where} ${apart} before the earliest year given for its introduction.`;
    case "narrower-before-wider":
      return `${what}: introduced${where} ${apart} before the wider claim has it at all.`;
    case "rivals": {
      const many = numberInWords(found.claims.length);
      const by = found.years === undefined ? "" : `, by ${apart} or more`;
      return `${what}: ${many} claims of ${QUESTIONS[found.relation ?? "current"]}${where} disagree${by}.`;
    }
    case "spread-in-a-circle":
      return `${what}: its spread leads back to ${labelOf(found.region ?? found.term)}, at least ${apart} after it set out.`;
    case "one-source":
      return found.claims.length === 1
        ? `${what}: one claim of its own, and one source.`
        : `${what}: ${numberInWords(found.claims.length)} claims of its own, and one source for all that is published.`;
  }
}

const yearsInWords = (years: number): string => (years === 1 ? "one year" : `${numberInWords(years)} years`);

const QUESTIONS: Readonly<Record<NonNullable<Disagreement["relation"]>, string>> = {
  introduced: "when it was introduced",
  attested: "when it is on record",
  "common from": "when it became common",
  "common until": "when it ceased to be common",
  discontinued: "when it was last made",
  current: "when it was in use",
  active: "when it was at work",
};
