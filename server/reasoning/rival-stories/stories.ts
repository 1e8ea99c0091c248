import type { TermId } from "../../domain/ids.ts";
import type { AssumedOdds, PlainStateOdds } from "../../domain/weighing/odds.ts";
import type { RivalKind } from "../../domain/weighing/rivals.ts";
import type { Span } from "../../domain/years.ts";

/** A story of the piece: the years of its making, and what it assumes in place of the usual odds. */
export interface Story {
  readonly kind: RivalKind;
  readonly region?: TermId;
  /** All years of making alike within these. */
  readonly years: Span;
  readonly odds: AssumedOdds;
  /** Before anything is seen, among the stories weighed. */
  readonly prior: number;
}

/** Years by which the provinces may be late. */
const LATE = 60;
/** Years after which an old style is revived rather than kept. */
const REVIVED = 50;
/** Years back from the examination in which pieces are put together for the trade. */
const LATELY = 150;

/** All of the first making, but for what nobody can exclude. */
const WHOLE: PlainStateOdds = { original: 0.98, later: 0.015, reused: 0.005 };
const MADE_UP: PlainStateOdds = { original: 0.4, later: 0.15, reused: 0.45 };
const ASSEMBLED: PlainStateOdds = { original: 0.2, later: 0.05, reused: 0.75 };

/**
 * The stories that every piece is held against (docs/method.md has each with its reasons). Those whose years lie beyond the
 * examination are left out; of another region there is one for each region given. "Made later to look old" only if its prior is set.
 */
export function storiesOf(
  claimed: Span,
  examined: number,
  regions: readonly TermId[],
  odds: AssumedOdds,
): readonly Story[] {
  const [first, last] = claimed;
  const prior = odds.rivals;
  const between = (a: number, b: number): Span => [a, Math.min(b, examined)];
  const all: readonly Story[] = [
    {
      kind: "as-claimed",
      years: between(first, last),
      odds: allParts(odds, WHOLE),
      prior: prior["as-claimed"],
    },
    { kind: "later-parts", years: between(first, last), odds, prior: prior["later-parts"] },
    {
      ...{ kind: "provincial", years: between(last + 1, last + LATE) },
      ...{ odds: { ...odds, lateSurvival: 0.3 }, prior: prior.provincial },
    },
    ...regions.map(
      (region): Story => ({
        ...{ kind: "another-region", region, years: between(first, last), odds },
        prior: prior["another-region"] / regions.length,
      }),
    ),
    {
      ...{ kind: "revival", years: between(last + REVIVED, examined) },
      ...{ odds: { ...odds, copied: 0.6 }, prior: prior.revival },
    },
    {
      ...{ kind: "made-up", years: between(first, examined) },
      ...{ odds: allParts(odds, MADE_UP), prior: prior["made-up"] },
    },
    {
      ...{ kind: "assembled", years: between(Math.max(last + 1, examined - LATELY), examined) },
      ...{ odds: { ...allParts(odds, ASSEMBLED), reuseYears: 120 }, prior: prior.assembled },
    },
  ];
  const deceit: readonly Story[] =
    odds.madeToDeceive === undefined
      ? []
      : [
          {
            ...{ kind: "to-look-old", years: between(last + REVIVED, examined) },
            ...{ odds: { ...odds, copied: 0.9, leak: Math.max(odds.leak, 0.02) }, prior: odds.madeToDeceive },
          },
        ];
  const left = [...all, ...deceit].filter(({ years: [a, b] }) => a <= b);
  const honest = left.filter(({ kind }) => kind !== "to-look-old");
  const sum = honest.reduce((total, story) => total + story.prior, 0);
  const share = left.length > honest.length ? 1 - (odds.madeToDeceive ?? 0) : 1;
  return left.map((story) =>
    honest.includes(story) ? { ...story, prior: (story.prior / sum) * share } : story,
  );
}

const allParts = (odds: AssumedOdds, plain: PlainStateOdds): AssumedOdds => ({
  ...odds,
  states: [],
  otherwise: plain,
});
