interface Named {
  readonly label: string;
  readonly otherLabels: readonly string[];
}

/** Without case, blanks and hyphens: a dust board is a dustboard. */
const fold = (text: string): string => text.toLowerCase().replace(/[\s-]+/g, "");
const singular = (folded: string): string => (folded.length > 3 ? folded.replace(/s$/, "") : folded);

/**
 * The terms that go by such words, those named exactly so first, then those whose name begins so, then those that contain
 * it; a label before other labels, else in the order given. A plural finds the one thing. Where nothing is called so, the
 * last word stands for all: a bracket foot is a foot. Without words all of them as they came.
 */
export function rankByName<Term extends Named>(terms: readonly Term[], words: string): readonly Term[] {
  const wanted = fold(words);
  if (wanted === "") return terms;
  const whole = rank(terms, wanted);
  if (whole.length > 0) return whole;
  const last = /\S+$/.exec(words.trim())?.[0] ?? "";
  return fold(last) === wanted ? [] : rank(terms, fold(last)).filter((term) => placeOf(term, fold(last)) < 2);
}

function rank<Term extends Named>(terms: readonly Term[], wanted: string): readonly Term[] {
  return terms
    .map((term) => ({ term, place: placeOf(term, wanted) }))
    .filter(({ place }) => place < NOWHERE)
    .sort((a, b) => a.place - b.place)
    .map(({ term }) => term);
}

const NOWHERE = 6;

/** 0 or 1: named so, by its label or another; 2 or 3: begins so; 4 or 5: contains it. */
function placeOf({ label, otherLabels }: Named, wanted: string): number {
  const one = singular(wanted);
  const fits = [
    (name: string) => name === wanted || name === one,
    (name: string) => name.startsWith(one),
    (name: string) => name.includes(one),
  ];
  for (const [at, isFit] of fits.entries()) {
    if (isFit(fold(label))) return 2 * at;
    if (otherLabels.some((name) => isFit(fold(name)))) return 2 * at + 1;
  }
  return NOWHERE;
}
