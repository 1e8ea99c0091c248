import { compareText, firstDifference } from "../domain/compare.ts";
import type { TermId } from "../domain/ids.ts";
import { isWithin } from "../domain/region.ts";
import type { Gap, SilenceReason } from "../domain/report.ts";
import type { Subject } from "./check.ts";
import type { Found } from "./find.ts";
import type { KnownGraph } from "./known-graph.ts";

const KINDS: readonly Gap["kind"][] = [
  "no-claim-here",
  "undated-term",
  "unknown-end",
  "open-list",
  "chain-cut",
];

const OF_SILENCE: Partial<Record<SilenceReason, Gap["kind"]>> = {
  undated: "undated-term",
  "out-of-scope": "no-claim-here",
  "unknown-end": "unknown-end",
  "open-list": "open-list",
};

/** What the graph does not know and a source could say: each once, with the first finding it bears on. */
export function gapsOf(subject: Subject, found: readonly Found[]): readonly Gap[] {
  const gaps = new Map<string, Gap>();
  const add = (gap: Gap): void => {
    const key = `${gap.kind} ${gap.term ?? ""} ${gap.kind === "no-claim-here" ? "" : (gap.claim ?? "")}`;
    if (!gaps.has(key)) gaps.set(key, gap);
  };
  for (const one of found) for (const gap of gapsOfFinding(one, subject)) add(gap);
  return [...gaps.values()].sort((a, b) =>
    firstDifference(
      KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind),
      compareText(a.term ?? "", b.term ?? ""),
      compareText(a.claim ?? "", b.claim ?? ""),
    ),
  );
}

function gapsOfFinding({ check, finding, silences }: Found, { graph }: Subject): readonly Gap[] {
  const { id, seen, support } = finding;
  if (seen !== "present") return [];
  const reached = check.views.flatMap((view) => view.reached(check.feature));
  const assumed = reached.filter(({ bounds }) =>
    bounds.some(({ assumption }) => assumption !== undefined && support.assumptions.includes(assumption)),
  );
  const unended = reached.flatMap(({ term, boundBy }) =>
    [...boundBy.keys()].flatMap((claim) => {
      const dated = graph.claimOf(claim);
      const isUnended = "when" in dated && graph.yearsOf(dated).endUnknown;
      return isUnended ? [{ kind: "unknown-end" as const, term, claim, finding: id }] : [];
    }),
  );
  return [
    ...assumed.map(({ term }) => ({ kind: "no-claim-here" as const, term, finding: id })),
    ...silences.flatMap(({ reason, term, claim }) => {
      const kind = OF_SILENCE[reason];
      const named = kind === "no-claim-here" || claim === undefined ? {} : { claim };
      const isNoGap = kind === undefined || (kind === "undated-term" && speaksWithoutDate(term, graph));
      return isNoGap ? [] : [{ kind, term, ...named, finding: id }];
    }),
    ...unended,
    ...reached
      .filter(({ term }) => graph.cutAt.has(term))
      .map(({ term }) => ({ kind: "chain-cut" as const, term, finding: id })),
  ];
}

/** A sign of a state, or what excuses a claim: it is not missed if nobody dates it. */
const speaksWithoutDate = (term: TermId, graph: KnownGraph): boolean =>
  graph.claims.some((claim) =>
    claim.relation === "indicates"
      ? claim.subject === term
      : claim.relation === "void when" && isWithin(term, claim.condition, graph.broader),
  );
