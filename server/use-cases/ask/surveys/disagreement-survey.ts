import type { Change } from "../../../domain/change.ts";
import type { Claim } from "../../../domain/claim.ts";
import type { SourceId, TermId } from "../../../domain/ids.ts";
import type { RevisionNumber } from "../../../domain/revision.ts";
import { layOn } from "../../../ports/follow-graph.ts";
import { openTurns } from "../../../ports/open-turns.ts";
import type { Store } from "../../../ports/store.ts";
import { isDated, regionsOf } from "../../../reasoning/disagreements/evidence.ts";
import { byYearsApart, findAboutSubjects, findOneSource } from "../../../reasoning/disagreements/find-all.ts";
import type { Disagreement, RuleId } from "../../../reasoning/disagreements/rule.ts";
import type { SurveyOptions } from "./survey-options.ts";

/** Where the claims of a whole graph do not stand together, at one revision. */
export interface DisagreementSurvey {
  /** What a rule finds, the farthest apart first. */
  found(rule: RuleId): readonly Disagreement[];
  /** Accepted claims that were held against each other. */
  claimCount(): number;
}

/** A survey that can be brought up to the next revision. */
export interface GrowingDisagreementSurvey extends DisagreementSurvey {
  /** Or says that the trees of scopes are others, so that all has to be looked for anew. */
  follow(change: Change, at: RevisionNumber): Promise<"anew" | undefined>;
}

type Reads = Pick<Store, "allClaims" | "listClaims" | "neighbourhood">;

/** Subjects whose claims are held against each other at once. */
const SUBJECTS_AT_ONCE = 20;
/** Parts of the making, as shares of its time: reading all claims, then holding those of each subject against each other. */
const READING = 0.4;

/** Nobody waits for a survey as for a page: of three parts of time, two are left to others. */
const restingTurns = () => openTurns({ restAfter: (worked) => 2 * worked });

/**
 * Holds the claims of a revision against each other. All rules but one look at the claims of one subject, and that one at the
 * claims of one region: so each is looked at by itself, and after a change only what it touched.
 */
export async function surveyDisagreements(
  store: Reads,
  at: RevisionNumber,
  { turn = restingTurns(), onProgress = () => {} }: SurveyOptions = {},
): Promise<GrowingDisagreementSurvey> {
  const about = new Map<TermId, readonly Disagreement[]>();
  const ofRegion = new Map<TermId, Disagreement>();
  const sources = new Map<TermId, Map<SourceId, number>>();
  const sorted = new Map<RuleId, readonly Disagreement[]>();
  let accepted = 0;

  const lay = (claim: Claim, sign: 1 | -1): void => {
    if (claim.status !== "accepted") return;
    accepted += sign;
    for (const region of regionsOf(claim)) {
      const counts = sources.get(region) ?? new Map<SourceId, number>();
      sources.set(region, counts);
      for (const source of sourcesOf(claim)) {
        const count = (counts.get(source) ?? 0) + sign;
        if (count === 0) counts.delete(source);
        else counts.set(source, count);
      }
    }
  };
  const lookAtSubjects = async (
    subjects: readonly TermId[],
    on: RevisionNumber,
    tell: (share: number) => void = () => {},
  ): Promise<void> => {
    for (let from = 0; from < subjects.length; from += SUBJECTS_AT_ONCE) {
      tell(from / subjects.length);
      await turn();
      const seeds = subjects.slice(from, from + SUBJECTS_AT_ONCE);
      const { terms, claims } = await store.neighbourhood({ seeds, regions: [], maxDepth: 0, at: on });
      const found = Map.groupBy(findAboutSubjects(terms, claims), ({ term }) => term);
      for (const subject of seeds) {
        const now = found.get(subject);
        if (now) about.set(subject, now);
        else about.delete(subject);
      }
    }
  };
  const lookAtRegions = async (regions: Iterable<TermId>, on: RevisionNumber): Promise<void> => {
    for (const region of regions) {
      ofRegion.delete(region);
      if (sources.get(region)?.size !== 1) continue;
      const own: Claim[] = [];
      for await (const slice of store.allClaims({ naming: region }, on))
        own.push(...slice.filter((claim) => claim.status === "accepted" && regionsOf(claim).has(region)));
      await turn();
      const found = findOneSource(region, own);
      if (found) ofRegion.set(region, found);
    }
  };

  const contestable = new Map<TermId, number>();
  const { total } = await store.listClaims({}, { first: 1 }, at);
  let read = 0;
  for await (const slice of store.allClaims({}, at)) {
    for (const claim of slice) {
      lay(claim, 1);
      if (claim.status === "accepted" && (isDated(claim) || claim.relation === "spread to"))
        contestable.set(claim.subject, (contestable.get(claim.subject) ?? 0) + 1);
    }
    read += slice.length;
    onProgress((READING * read) / total);
    await turn();
  }
  // One claim alone disagrees with none.
  await lookAtSubjects(
    [...contestable.keys()].filter((subject) => (contestable.get(subject) ?? 0) > 1),
    at,
    (share) => onProgress(READING + (1 - READING) * share),
  );
  contestable.clear();
  await lookAtRegions(sources.keys(), at);
  onProgress(1);

  return {
    claimCount: () => accepted,
    found: (rule) => {
      const known = sorted.get(rule);
      if (known) return known;
      const all = rule === "one-source" ? [...ofRegion.values()] : [...about.values()].flat();
      const found = all.filter((one) => one.rule === rule).sort(byYearsApart);
      sorted.set(rule, found);
      return found;
    },
    follow: async (change, next) => {
      if (change.some(movesTerm)) return "anew";
      const subjects = new Set<TermId>();
      const regions = new Set<TermId>();
      await layOn(change, (edit) => {
        if (edit.kind !== "claim") return;
        for (const [claim, sign] of [[edit.before, -1] as const, [edit.after, 1] as const]) {
          if (!claim) continue;
          lay(claim, sign);
          if ("subject" in claim) subjects.add(claim.subject);
          for (const region of regionsOf(claim)) regions.add(region);
        }
      });
      await lookAtSubjects([...subjects], next);
      await lookAtRegions(regions, next);
      if (subjects.size > 0) sorted.clear();
      return undefined;
    },
  };
}

/** Whether an edit puts a term below another; one that is withdrawn has nothing below it. */
const movesTerm = ({ kind, before, after }: Change[number]): boolean =>
  kind === "term" && before !== undefined && after !== undefined && before.broader !== after.broader;

const sourcesOf = ({ citations }: Claim): ReadonlySet<SourceId> =>
  new Set(citations.flatMap((citation) => (citation.basis === "published" ? [citation.source] : [])));
