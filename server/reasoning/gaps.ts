import type { Gap, Sign, SilenceReason } from "../domain/report.ts";
import type { Subject } from "./check.ts";
import { compareText, firstDifference } from "./compare.ts";
import type { Found } from "./find.ts";

const KINDS: readonly Gap["kind"][] = [
  "exception-not-looked-for",
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

/** What the graph does not know and a source could say, and exceptions to look for: each once, with the first finding it bears on. */
export function gapsOf(subject: Subject, found: readonly Found[], signs: readonly Sign[]): readonly Gap[] {
  const gaps = new Map<string, Gap>();
  const add = (gap: Gap): void => {
    const key = `${gap.kind} ${gap.term ?? ""} ${gap.kind === "no-claim-here" ? "" : (gap.claim ?? "")}`;
    if (!gaps.has(key)) gaps.set(key, gap);
  };
  for (const one of found) for (const gap of gapsOfFinding(one, subject)) add(gap);
  for (const { observation, voidIf } of signs)
    for (const { exception, condition, standing } of voidIf)
      if (standing !== "merely-possible")
        add({ kind: "exception-not-looked-for", term: condition, claim: exception, finding: observation });
  return [...gaps.values()].sort((a, b) =>
    firstDifference(
      KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind),
      compareText(a.term ?? "", b.term ?? ""),
      compareText(a.claim ?? "", b.claim ?? ""),
    ),
  );
}

function gapsOfFinding({ check, finding, silences }: Found, { graph }: Subject): readonly Gap[] {
  const { id, seen, voidIf, support } = finding;
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
    ...voidIf
      .filter(({ standing }) => standing !== "merely-possible")
      .map(({ exception, condition }) => ({
        ...{ kind: "exception-not-looked-for" as const, term: condition, claim: exception, finding: id },
      })),
    ...assumed.map(({ term }) => ({ kind: "no-claim-here" as const, term, finding: id })),
    ...silences.flatMap(({ reason, term, claim }) => {
      const kind = OF_SILENCE[reason];
      const named = kind === "no-claim-here" || claim === undefined ? {} : { claim };
      return kind === undefined ? [] : [{ kind, term, ...named, finding: id }];
    }),
    ...unended,
    ...reached
      .filter(({ term }) => graph.cutAt.has(term))
      .map(({ term }) => ({ kind: "chain-cut" as const, term, finding: id })),
  ];
}
