import type { Term } from "#server/domain/term.ts";
import { without, withTerm } from "../seed-graph.ts";
import type { Rule } from "./rule.ts";

/** The texts of looking notes, each with its field. */
function textsOf({ looking }: Term): readonly { readonly field: string; readonly text: string }[] {
  if (looking === undefined) return [];
  const { how, innocent, mistakenFor = [] } = looking;
  return [
    { field: "how", text: how },
    ...(innocent === undefined ? [] : [{ field: "innocent", text: innocent }]),
    ...mistakenFor.flatMap(({ what, apart }, i) => [
      { field: `mistakenFor ${i + 1}, what`, text: what },
      { field: `mistakenFor ${i + 1}, apart`, text: apart },
    ]),
  ];
}

const sentencesOf = (text: string): readonly string[] =>
  text.split(/(?<=[.!?])\s+/).map((sentence) => sentence.trim());

/** The features that say a sentence in their looking notes, by the sentence. */
function featuresBySentence(terms: readonly Term[]): ReadonlyMap<string, ReadonlySet<string>> {
  const said = new Map<string, Set<string>>();
  for (const term of terms)
    for (const { text } of textsOf(term))
      for (const sentence of sentencesOf(text))
        said.set(sentence, (said.get(sentence) ?? new Set<string>()).add(term.id));
  return said;
}

const LOOKED_FOR = "feature.wire-nail";
const withHow = (term: Term, how: string) => ({ ...term, looking: { ...term.looking, how } });

export const lookingRules: readonly Rule[] = [
  {
    says: "every feature says how it is looked for",
    find: ({ terms }) =>
      terms
        .filter(({ kind, looking }) => kind === "feature" && looking === undefined)
        .map(({ id }) => `${id} has no looking notes`),
    brokenBy: {
      "the notes of one feature left out": (seed) =>
        withTerm(seed, LOOKED_FOR, (term) => without(term, "looking")),
    },
  },
  {
    says: "looking notes name no year: a year is a claim, with its citation",
    find: ({ terms }) =>
      terms.flatMap((term) =>
        textsOf(term)
          .filter(({ text }) => /\b(?:1[4-9]\d\d|20\d\d)\b/.test(text))
          .map(({ field, text }) => `${term.id} names a year in looking, ${field}: “${text}”`),
      ),
    brokenBy: {
      "a year in passing": (seed) =>
        withTerm(seed, LOOKED_FOR, (term) => withHow(term, "Look for wire: made after 1880.")),
    },
  },
  {
    says: "no sentence of looking notes is said of more than three features: each is written for its own",
    find: ({ terms }) =>
      [...featuresBySentence(terms)]
        .filter(([, features]) => features.size > 3)
        .map(([sentence, features]) => `${[...features].join(", ")} all say “${sentence}”`),
    brokenBy: {
      "a sentence for all nails": (seed) => ({
        ...seed,
        terms: seed.terms.map((term) =>
          term.looking === undefined ? term : (withHow(term, "Look closely.") as Term),
        ),
      }),
    },
  },
  {
    says: "nothing is mistaken for itself",
    find: ({ terms }) =>
      terms
        .filter(({ id, looking }) => looking?.mistakenFor?.some(({ term }) => term === id))
        .map(({ id }) => `${id} is mistaken for itself`),
    brokenBy: {
      "a look-alike copied from the line": (seed) =>
        withTerm(seed, LOOKED_FOR, (term) => ({
          ...term,
          looking: {
            ...term.looking,
            mistakenFor: [{ what: "a wire nail", term: LOOKED_FOR, apart: "It is the same." }],
          },
        })),
    },
  },
];
