import type { Dated } from "../../domain/claim.ts";
import type { TermId } from "../../domain/ids.ts";
import { scopeKey } from "../../domain/scope.ts";
import { type Span, type Year, type Years, yearsApart } from "../../domain/years.ts";
import { hardnessOf } from "../known-graph.ts";
import type { Evidence } from "./evidence.ts";
import { finiteYears } from "./finite-years.ts";
import type { Disagreement, DisagreementRule } from "./rule.ts";

/** [Q5] Claims of one subject, relation, hardness and scope of which some two have no year in common for an end they state. */
export const rivals: DisagreementRule = {
  id: "rivals",
  find: (evidence) =>
    [...evidence.dated].flatMap(([term, claims]) =>
      [...Map.groupBy(claims, statesWhat).values()]
        .filter(({ length }) => length > 1)
        .flatMap((group) => quarrelOf(term, group, evidence)),
    ),
};

const statesWhat = (claim: Dated): string =>
  `${claim.relation} ${hardnessOf(claim)} ${scopeKey(claim.scope)}`;

/** Those of a group that disagree with another one of it, as one finding. */
function quarrelOf(term: TermId, group: readonly Dated[], evidence: Evidence): readonly Disagreement[] {
  const [{ relation, scope }] = group as [Dated];
  const ends = group.map((claim) => statedEnds(claim, evidence));
  const apart = ends.map((a) => Math.max(...ends.map((b) => endsApart(a, b))));
  const disputed = group.filter((_, i) => (apart[i] ?? 0) > 0);
  if (disputed.length === 0) return [];
  return [
    {
      id: `rivals:${disputed.map(({ id }) => id).join(":")}`,
      ...{ rule: "rivals", term, claims: disputed.map(({ id }) => id), relation },
      ...(scope.region === undefined ? {} : { region: scope.region }),
      ...finiteYears(Math.max(...apart)),
    },
  ];
}

interface StatedEnds {
  readonly begin?: Span;
  readonly end?: Span;
}

/** The years that each stated end can be of, with its pad. */
function statedEnds(claim: Dated, { yearsOf }: Evidence): StatedEnds {
  const { states, existsFrom, until } = yearsOf(claim);
  return {
    ...(states === "begin" || states === "both" ? { begin: [existsFrom.outer, existsFrom.inner] } : {}),
    ...(states === "end" || states === "both" ? { end: [lastOf(until.inner), lastOf(until.outer)] } : {}),
  };
}

const lastOf = (years: Years): Year => years.at(-1)?.[1] ?? Number.NEGATIVE_INFINITY;

/** Years between what two claims say of an end that both state; the larger of the two. */
const endsApart = (a: StatedEnds, b: StatedEnds): Year =>
  Math.max(spansApart(a.begin, b.begin), spansApart(a.end, b.end));
const spansApart = (a: Span | undefined, b: Span | undefined): Year =>
  a && b ? (yearsApart([a], [b]) ?? 0) : 0;
